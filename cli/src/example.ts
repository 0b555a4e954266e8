import { readFileSync } from "node:fs";
import { answers } from "@ringwright/answers";
import { say } from "@ringwright/words";
import { exits } from "./exits.ts";
import type { Streams } from "./streams.ts";

/** Where the examples are, seen from dist/src or src. */
function exampleFile(name: string): URL {
  const up = import.meta.url.includes("/dist/") ? "../../../" : "../../";
  return new URL(`${up}answers/examples/${name}`, import.meta.url);
}

/** `ringwright example [NAME]`: a commented box, or a question with its reply. */
export function exampleCommand([name]: readonly string[], streams: Streams): number {
  if (name === undefined || name === "plan") {
    streams.out(readFileSync(exampleFile("box.yaml"), "utf8"));
    return exits.ok;
  }
  if (!answers.some((entry) => entry.name === name)) {
    streams.err(`${say({ id: "command-no-example", with: { given: name, allowed: answers.map((entry) => entry.name).join(", ") } })}\n`);
    return exits.malformed;
  }
  streams.out(readFileSync(exampleFile(`${name}.json`), "utf8"));
  return exits.ok;
}
