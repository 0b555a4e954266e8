import { sources } from "@ringwright/core/sources";
import type { Typed } from "@ringwright/core/units";
import type { Answer, Refusal, Step, Warning } from "@ringwright/core/workings";
import { nameOf, say } from "@ringwright/words";
import type { AnyAnswer } from "./answer.ts";
import type { Facts } from "./facts.ts";
import { type Json, type Malformed, type Reader, writable } from "./field.ts";
import { answers } from "./register.ts";
import { meantByTyped, withSlips } from "./slips-typed.ts";
import { typedAt } from "./typed-at.ts";

/** A reply as it leaves the program: plain JSON, SI, full precision. */
export type Reply =
  | {
      readonly ok: true;
      readonly answer: Json;
      readonly workings: readonly Json[];
      readonly citations: readonly Json[];
      readonly warnings: readonly Json[];
    }
  | {
      readonly ok: false;
      readonly refusal: {
        readonly kind: string;
        readonly input: string;
        readonly given?: Json;
        readonly allowed?: Json;
        readonly why: string;
      };
    };

/** A reply without an answer. */
export type RefusedReply = Extract<Reply, { readonly ok: false }>;

const malformedKinds: ReadonlySet<string> = new Set(["malformed", "unknown-answer", "unknown-field", "missing", "wrong-unit"]);

/** Whether a refusal is of the question itself (exit 2, HTTP 400) and not of the calculation (exit 3, HTTP 422). */
export function isMalformed(refusal: { readonly kind: string }): boolean {
  return malformedKinds.has(refusal.kind);
}

/** The description of an answer, by name. */
export function findAnswer(name: string): AnyAnswer | undefined {
  return answers.find((entry) => entry.name === name);
}

/** A question that was read and worked: what the core found, and what was typed at each path. */
export interface Worked {
  readonly description: AnyAnswer;
  /** As it was typed. */
  readonly question: Json;
  readonly found: Answer<unknown>;
  readonly typed: ReadonlyMap<string, Typed>;
  /** Where there is no answer: what may have been meant by what was typed. */
  readonly meant?: Warning;
}

/** Reads one question and works it out; a malformed question comes back as the reply to give. */
export function work(name: string, question: Json, facts: Facts): Worked | { readonly malformed: Reply } {
  const description = findAnswer(name);
  if (!description) {
    const allowed = answers.map((entry) => entry.name);
    return { malformed: refusedQuestion({ kind: "unknown-answer", input: "name", given: name, allowed, id: "unknown-answer" }) };
  }
  const reader: Reader = { typed: new Map() };
  const read = description.question.read(question, "", reader);
  if (!read.ok) return { malformed: refusedQuestion(read.malformed) };
  const { typed } = reader;
  const { plausible } = facts.uncertainty;
  const found = description.work(read.value, facts);
  if (found.ok) {
    const warnings = withSlips(read.value, typed, plausible, found.warnings);
    return { description, question, found: { ...found, warnings }, typed };
  }
  const meant = meantByTyped(read.value, typed, plausible);
  return { description, question, found, typed, ...(meant ? { meant } : {}) };
}

/**
 * Asks one question. Nothing throws for bad input: a malformed question and a
 * refusal by the core come back as data.
 */
export function ask(name: string, question: Json, facts: Facts): Reply {
  const worked = work(name, question, facts);
  return "malformed" in worked ? worked.malformed : replyOf(worked);
}

/** Writes out what was worked out. */
export function replyOf({ description, question, found, typed, meant }: Worked): Reply {
  if (!found.ok) return refused(found.refusal, question, typed, meant);
  const written = description.answer.write(found.value as never);
  const notFinite = firstNotFinite(written, "answer");
  if (notFinite)
    return {
      ok: false,
      refusal: { kind: "outside-range", input: notFinite, why: say({ id: "no-finite-result", with: { rule: notFinite } }) },
    };
  return {
    ok: true,
    answer: written,
    workings: found.workings.map(writeStep),
    citations: cited(found.workings, found.warnings),
    warnings: found.warnings.map((warning) => writeWarning(warning, question)),
  };
}

/** Refuses a question before anything is worked out. */
export function refusedQuestion({ id, with: shown, ...malformed }: Malformed): RefusedReply {
  const { input, given, allowed } = malformed;
  return {
    ok: false,
    refusal: {
      ...malformed,
      why: say({
        id,
        with: {
          input,
          ...(given === undefined ? {} : { given: inWords(given) }),
          ...(allowed === undefined ? {} : { allowed: inWords(allowed) }),
          ...shown,
        },
      }),
    },
  };
}

/** What was given or is allowed, for a sentence: no brackets and braces where words will do. */
export function inWords(json: Json): string {
  if (typeof json === "string") return json;
  if (Array.isArray(json) && json.length > 0)
    return json.map((entry: Json) => (typeof entry === "object" ? JSON.stringify(entry) : String(entry))).join(", ");
  if (typeof json !== "object" || json === null) return String(json);
  if (Array.isArray(json)) return "[]";
  const { value, unit, min, above, max, ...rest } = json as { readonly [name: string]: Json | undefined };
  if (Object.keys(rest).length > 0) return JSON.stringify(json);
  if (value !== undefined || unit !== undefined) {
    return [value, unit]
      .map((part) => (part === undefined || part === null ? "" : String(part)))
      .join(" ")
      .trim();
  }
  const from = min === undefined ? (above === undefined ? "" : `above ${String(above)}`) : String(min);
  if (max === undefined) return above === undefined ? `${from} or more` : from;
  return from === "" ? `${String(max)} or less` : `${from} to ${String(max)}`;
}

/** The field and what was typed in it, where the question has it; else what the core was given. */
function asTyped(input: string | undefined, given: Json | undefined, question: Json): { input?: string; given?: Json } {
  const found = input === undefined ? undefined : typedAt(question, input);
  if (found) return { input: found.path, given: writable(found.typed) };
  return { ...(input === undefined ? {} : { input }), ...(given === undefined ? {} : { given }) };
}

/** A range open at zero is written as one. */
function writeAllowed(allowed: NonNullable<Refusal["allowed"]>): Json {
  if ("min" in allowed && allowed.min === Number.MIN_VALUE) {
    const { min: _, ...rest } = allowed;
    return { above: 0, ...rest };
  }
  return allowed as Json;
}

function refused(
  { says, citation, input, given, allowed, kind }: Refusal,
  question: Json,
  typed: ReadonlyMap<string, Typed>,
  meant: Warning | undefined,
): Reply {
  const text = typed.get(input)?.typed;
  const outside = says.id.startsWith("outside-range") && text !== undefined;
  const why = say(outside ? { ...says, with: { ...says.with, given: text } } : says);
  // A refusal that offers what was meant by its own field is not doubled.
  const alsoSaid = meant === undefined || (meant.input === input && says.with?.meant !== undefined) ? undefined : say(meant.says);
  return {
    ok: false,
    refusal: {
      kind,
      input,
      ...asTyped(input, given, question),
      ...(allowed === undefined ? {} : { allowed: writeAllowed(allowed) }),
      why: alsoSaid === undefined ? why : `${why} ${alsoSaid}`,
      ...(citation ? { citation: writeCitation(citation) } : {}),
    },
  };
}

function writeCitation(citation: { readonly source: keyof typeof sources; readonly at?: string; readonly seen?: string }): Json {
  const source = sources[citation.source];
  return {
    source: citation.source,
    title: source.title,
    ...(citation.at === undefined ? {} : { at: citation.at }),
    seen: citation.seen ?? source.seen,
  };
}

function writeStep([rule, inputs, value, uncertainty]: Step): Json {
  return {
    rule: rule.id,
    name: nameOf(rule.name ?? rule.id),
    symbol: rule.symbol,
    expression: rule.expression,
    value,
    unit: rule.unit,
    ...(uncertainty === undefined ? {} : { standardUncertainty: uncertainty }),
    inputs: rule.inputs.map((input, index) => ({
      symbol: input.symbol,
      name: nameOf(input.name),
      value: finite(inputs[index]),
      unit: input.unit,
      ...(input.valid ? { valid: { ...input.valid } } : {}),
    })),
    ...(rule.assumed ? { assumed: { ...rule.assumed } } : {}),
    citation: writeCitation(rule.citation),
  };
}

const finite = (value: number | undefined): Json => (value === undefined ? null : Number.isFinite(value) ? value : String(value));

function writeWarning({ says, citation, ...warning }: Warning, question: Json): Json {
  const { input, given, ...rest } = warning;
  const echo = input === undefined ? undefined : typedAt(question, input)?.typed;
  // A whole list or survey is not said again for a remark about it.
  if (given === undefined && typeof echo === "object" && echo !== null && !Object.hasOwn(echo, "value")) {
    return {
      ...rest,
      ...(input === undefined ? {} : { input }),
      why: say(says),
      ...(citation ? { citation: writeCitation(citation) } : {}),
    };
  }
  return { ...rest, ...asTyped(input, given, question), why: say(says), ...(citation ? { citation: writeCitation(citation) } : {}) };
}

/** Every source that the workings and warnings rest on, once. */
function cited(steps: readonly Step[], warnings: readonly Warning[]): Json[] {
  const seen = new Map<string, Json>();
  for (const citation of [...steps.map(([rule]) => rule.citation), ...warnings.flatMap((warning) => warning.citation ?? [])]) {
    const key = `${citation.source} ${citation.at ?? ""}`;
    if (!seen.has(key)) seen.set(key, writeCitation(citation));
  }
  return [...seen.values()];
}

function firstNotFinite(value: Json, path: string): string | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? undefined : path;
  if (typeof value !== "object" || value === null) return undefined;
  for (const [name, entry] of Object.entries(value)) {
    const found = firstNotFinite(entry as Json, `${path}.${name}`);
    if (found) return found;
  }
  return undefined;
}
