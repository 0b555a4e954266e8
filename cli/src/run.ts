import { say } from "@ringwright/words";
import { answerCommand, answersCommand } from "./answer.ts";
import { exampleCommand } from "./example.ts";
import { exits } from "./exits.ts";
import { type Streams, terminal } from "./streams.ts";

/** Runs one command of `ringwright` and gives its exit code. */
export async function run(words: readonly string[], streams: Streams = terminal): Promise<number> {
  const [command, ...rest] = words;
  const usage = () => `${say({ id: "command-usage" })}\n`;
  switch (command) {
    case "plan": {
      // Loaded when it is needed: a single answer need not wait for what lays out a whole plan.
      const { planCommand } = await import("./plan.ts");
      return planCommand(rest, streams);
    }
    case "answer":
      return answerCommand(rest, streams);
    case "answers":
      return answersCommand(streams);
    case "example":
      return exampleCommand(rest, streams);
    case "serve": {
      const { serveCommand } = await import("./serve.ts");
      return serveCommand(rest, streams);
    }
    case "help":
    case "--help":
    case "-h":
      streams.out(usage());
      return exits.ok;
    default:
      streams.err(command === undefined ? usage() : `${say({ id: "command-unknown", with: { command } })}\n\n${usage()}`);
      return exits.malformed;
  }
}
