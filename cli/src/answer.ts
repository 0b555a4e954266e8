import { ask, isMalformed, listAnswers, type Reply, readJson, refusedQuestion } from "@ringwright/answers";
import { readAllFacts } from "@ringwright/data";
import { exits } from "./exits.ts";
import type { Streams } from "./streams.ts";

/** The exit code that a reply asks for. */
function exitFor(reply: Reply): number {
  if (reply.ok) return exits.ok;
  return isMalformed(reply.refusal) ? exits.malformed : exits.refused;
}

/** `ringwright answer NAME`: one JSON document and a newline on standard output, whatever happens. */
export function answerCommand([name = "", ...rest]: readonly string[], streams: Streams): number {
  const reply = rest.length > 0 ? moreWords(rest) : replyTo(name, streams);
  streams.out(`${JSON.stringify(reply)}\n`);
  return exitFor(reply);
}

function moreWords(rest: readonly string[]): Reply {
  return refusedQuestion({ kind: "malformed", input: "command", given: rest.join(" "), id: "words-after-name" });
}

function replyTo(name: string, streams: Streams): Reply {
  let text: string;
  try {
    text = streams.read("-");
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return refusedQuestion({ kind: "malformed", input: "question", id: "not-json", with: { why } });
  }
  const read = readJson(text);
  return read.ok ? ask(name, read.value, readAllFacts()) : refusedQuestion(read.malformed);
}

/** `ringwright answers`: names with what they answer and their schemas. */
export function answersCommand(streams: Streams): number {
  streams.out(`${JSON.stringify(listAnswers(), null, 2)}\n`);
  return exits.ok;
}
