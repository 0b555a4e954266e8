import { createRequire } from "node:module";

/** The version of this program, as its packages carry it. */
export const { version } = createRequire(import.meta.url)("@ringwright/server/package.json") as { readonly version: string };
