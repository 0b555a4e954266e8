import { answers, ask, isMalformed, type Json, type Reply, replySchema } from "@ringwright/answers";
import { readAllFacts } from "@ringwright/data";
import { say } from "@ringwright/words";
import { exits } from "./exits.ts";
import type { Streams } from "./streams.ts";

/** The exit code that a reply asks for. */
function exitFor(reply: Reply): number {
  if (reply.ok) return exits.ok;
  return isMalformed(reply.refusal) ? exits.malformed : exits.refused;
}

/** `ringwright answer NAME`: one JSON document and a newline on standard output, whatever happens. */
export function answerCommand([name = ""]: readonly string[], streams: Streams): number {
  const reply = replyTo(name, streams);
  streams.out(`${JSON.stringify(reply)}\n`);
  return exitFor(reply);
}

function replyTo(name: string, streams: Streams): Reply {
  let question: Json;
  try {
    question = JSON.parse(streams.read("-")) as Json;
  } catch (error) {
    const why = say({ id: "not-json", with: { why: error instanceof Error ? error.message : String(error) } });
    return { ok: false, refusal: { kind: "malformed", input: "question", why } };
  }
  return ask(name, question, readAllFacts());
}

/** `ringwright answers`: names with what they answer and their schemas. */
export function answersCommand(streams: Streams): number {
  const list = answers.map((entry) => ({
    name: entry.name,
    about: entry.about,
    question: entry.question.schema,
    reply: replySchema(entry),
  }));
  streams.out(`${JSON.stringify(list, null, 2)}\n`);
  return exits.ok;
}
