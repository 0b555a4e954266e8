import { type AnyAnswer, answers, ask, type Facts, foundSchema, groupField, type Json, listAnswers, textField } from "@ringwright/answers";
import { exampleOf } from "../docs/examples.ts";
import { asItIs, largestQuestion } from "../operations/fields.ts";
import { type AnyOperation, type Handled, json, operation, replies } from "../operations/operation.ts";
import { problemOfRefusal } from "../problems/problem.ts";

/** Every answer under its own path, the list of them, and a path for names that are none. */
export function answerOperations(facts: Facts): readonly AnyOperation[] {
  let list: string | undefined;
  return [
    operation({
      id: "answers",
      topic: "answers",
      method: "GET",
      path: "/api/v1/answers",
      reply: { type: json, schema: listSchema },
      refuses: [],
      handle: () => {
        list ??= JSON.stringify(listAnswers());
        return { content: list };
      },
    }),
    ...answers.map((description) => answerOperation(description, facts)),
    operation({
      id: "answer",
      topic: "answers",
      method: "POST",
      path: "/api/v1/answers/{name}",
      params: groupField({ name: textField() }),
      body: { field: asItIs({}), largest: largestQuestion },
      reply: { type: json, schema: { type: "object" } },
      refuses: ["nothing-there", "too-large", "media-type", "refused"],
      handle: ({ params: { name }, body }) => answered(name, body, facts),
    }),
  ];
}

function answerOperation(description: AnyAnswer, facts: Facts): AnyOperation {
  const { name, about, question } = description;
  return operation({
    id: `answer-${name}`,
    about,
    topic: "answers",
    method: "POST",
    path: `/api/v1/answers/${name}`,
    body: { field: asItIs(question.schema), largest: largestQuestion, example: () => exampleOf(name).question },
    reply: { type: json, schema: foundSchema(description), example: () => exampleOf(name).reply },
    refuses: ["too-large", "media-type", "refused"],
    handle: ({ body }) => answered(name, body, facts),
  });
}

/** The reply that the command line gives, as a document or as a problem. */
function answered(name: string, question: Json, facts: Facts): Handled {
  const reply = ask(name, question, facts);
  return reply.ok ? replies(reply) : { problem: problemOfRefusal(reply.refusal) };
}

const listSchema = {
  type: "array",
  items: {
    type: "object",
    properties: { name: { type: "string" }, about: { type: "string" }, question: { type: "object" }, reply: { type: "object" } },
    required: ["name", "about", "question", "reply"],
    additionalProperties: false,
  },
} as const;
