import type { Says } from "@ringwright/core/workings";
import { dataFolder } from "./data-folder.ts";

/** What the environment asks for. */
export interface Choices {
  readonly port: number;
  /** A folder, or the address of a PostgreSQL database. */
  readonly where: string;
  /** What people are told of it: never a password. */
  readonly shown: string;
  readonly database: boolean;
}

/** Port where none is named. */
export const usualPort = 4747;

/** Reads PORT, RINGWRIGHT_DATA and DATABASE_URL; what is wrong comes back as words. */
export function choicesIn(env: Readonly<Record<string, string | undefined>>): Choices | Says {
  const { PORT: asked = "", DATABASE_URL: url = "" } = env;
  const port = asked === "" ? usualPort : /^\d{1,5}$/u.test(asked) ? Number(asked) : Number.NaN;
  if (!(port <= 65_535)) return { id: "start-port-malformed", with: { given: asked } };
  if (url === "") {
    const folder = dataFolder(env);
    return { port, where: folder, shown: folder, database: false };
  }
  if (!/^postgres(?:ql)?:\/\//u.test(url)) return { id: "start-database-malformed" };
  return { port, where: url, shown: withoutSecrets(url), database: true };
}

/** An address of a database as it may be shown: without names, passwords and options. */
function withoutSecrets(url: string): string {
  const [bare = ""] = url.split("?");
  return bare.replace(/^([a-z]+:\/\/).*@/u, "$1");
}
