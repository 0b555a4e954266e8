import { isMalformed, type JsonSchema, type Malformed, type Reply, refusalSchema, refusedQuestion } from "@ringwright/answers";
import { say } from "@ringwright/words";

/** Every problem that a reply can be, with its HTTP status. */
export const problemStatus = {
  "malformed-question": 400,
  "foreign-page": 403,
  "nothing-there": 404,
  "wrong-method": 405,
  "too-slow": 408,
  "too-large": 413,
  "media-type": 415,
  "wrong-host": 421,
  refused: 422,
  "head-too-large": 431,
  fault: 500,
  "store-fault": 503,
} as const;

export type ProblemId = keyof typeof problemStatus;
export const problemIds = Object.keys(problemStatus) as readonly ProblemId[];

/** Problems that any request can meet, whatever it asks. */
export const anyRequest: readonly ProblemId[] = ["malformed-question", "foreign-page", "wrong-host", "fault"];

type Refusal = Extract<Reply, { ok: false }>["refusal"];

/** A problem (RFC 9457) with the same `ok` and `refusal` that the command line gives. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly ok: false;
  readonly refusal: Refusal;
}

export const problemType = "application/problem+json; charset=utf-8";

export function problem(id: ProblemId, refusal: Refusal): Problem {
  return {
    type: `/docs#problem-${id}`,
    title: say({ id: `problem-${id}` }),
    status: problemStatus[id],
    detail: refusal.why,
    ok: false,
    refusal,
  };
}

/** A problem with the sentence of one of the ids in words/. */
export function problemSaying(id: ProblemId, said: Malformed | (Omit<Malformed, "kind"> & { readonly kind: "not-known" })): Problem {
  const reply = refusedQuestion(said as Malformed);
  if (reply.ok) throw new Error("a refusal was answered");
  return problem(id, reply.refusal);
}

/** The problem of a question that an answer refused. */
export function problemOfRefusal(refusal: Refusal): Problem {
  if (refusal.kind === "unknown-answer") return problem("nothing-there", refusal);
  return problem(isMalformed(refusal) ? "malformed-question" : "refused", refusal);
}

/** Nothing stands under this name. */
export function nothingThere(input: string, given: string): Problem {
  return problemSaying("nothing-there", { kind: "not-known", input, given, id: "nothing-there" });
}

export const problemSchema: JsonSchema = {
  type: "object",
  properties: {
    type: { type: "string", format: "uri-reference" },
    title: { type: "string" },
    status: { type: "integer", minimum: 400, maximum: 599 },
    detail: { type: "string" },
    ok: { const: false },
    refusal: refusalSchema,
  },
  required: ["type", "title", "status", "detail", "ok", "refusal"],
  additionalProperties: false,
};
