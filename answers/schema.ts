import type { AnyAnswer } from "./answer.ts";
import type { JsonSchema } from "./field.ts";
import { answers } from "./register.ts";

const text = { type: "string" } as const;

const citation: JsonSchema = {
  type: "object",
  properties: { source: text, title: text, at: text, seen: { enum: ["read", "quoted", "memory", "derived", "practice"] } },
  required: ["source", "title", "seen"],
  additionalProperties: false,
};

const range: JsonSchema = { type: "object", properties: { min: { type: "number" }, max: { type: "number" } }, additionalProperties: false };

const step: JsonSchema = {
  type: "object",
  properties: {
    rule: text,
    name: text,
    symbol: text,
    expression: text,
    value: { type: "number" },
    unit: text,
    standardUncertainty: { type: "number", minimum: 0 },
    inputs: {
      type: "array",
      items: {
        type: "object",
        properties: { symbol: text, name: text, value: { type: ["number", "string", "null"] }, unit: text, valid: range },
        required: ["symbol", "name", "value", "unit"],
        additionalProperties: false,
      },
    },
    assumed: range,
    citation,
  },
  required: ["rule", "name", "symbol", "expression", "value", "unit", "inputs", "citation"],
  additionalProperties: false,
};

const warning: JsonSchema = {
  type: "object",
  properties: {
    kind: { enum: ["slip", "outside-validity", "caution", "limit", "gap", "note"] },
    input: text,
    given: true,
    suggestion: true,
    why: text,
    citation,
  },
  required: ["kind", "why"],
  additionalProperties: false,
};

/** What is said when there is no answer: which field, what was given, what is allowed, why. */
export const refusalSchema: JsonSchema = {
  type: "object",
  properties: {
    kind: { enum: ["malformed", "unknown-answer", "unknown-field", "missing", "wrong-unit", "outside-range", "impossible", "not-known"] },
    input: text,
    given: true,
    allowed: true,
    why: text,
    citation,
  },
  required: ["kind", "input", "why"],
  additionalProperties: false,
};

/** The JSON Schema (2020-12) of what an answer found. */
export function foundSchema(description: AnyAnswer): JsonSchema {
  return {
    type: "object",
    properties: {
      ok: { const: true },
      answer: description.answer.schema,
      workings: { type: "array", items: step },
      citations: { type: "array", items: citation },
      warnings: { type: "array", items: warning },
    },
    required: ["ok", "answer", "workings", "citations", "warnings"],
    additionalProperties: false,
  };
}

/** The JSON Schema (2020-12) of an answer's reply, found or refused. */
export function replySchema(description: AnyAnswer): JsonSchema {
  return {
    anyOf: [
      foundSchema(description),
      {
        type: "object",
        properties: { ok: { const: false }, refusal: refusalSchema },
        required: ["ok", "refusal"],
        additionalProperties: false,
      },
    ],
  };
}

/** Every question that can be asked, with its schemas, as command line and HTTP list them. */
export function listAnswers(): readonly {
  readonly name: string;
  readonly about: string;
  readonly question: JsonSchema;
  readonly reply: JsonSchema;
}[] {
  return answers.map((entry) => ({
    name: entry.name,
    about: entry.about,
    question: entry.question.schema,
    reply: replySchema(entry),
  }));
}
