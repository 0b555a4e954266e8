import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Json } from "@ringwright/answers";

const { resolve } = createRequire(import.meta.url);

/** The example question of an answer with its reply, as `ringwright example` shows it. */
export function exampleOf(name: string): { readonly question: Json; readonly reply: Json } {
  return JSON.parse(readFileSync(resolve(`@ringwright/answers/examples/${name}.json`), "utf8")) as { question: Json; reply: Json };
}
