import { type Reader, surveyField, withSlips } from "@ringwright/answers";
import { type PlanFacts, plan, type Survey } from "@ringwright/core/plan";
import { inUnit, type Kind, type Kinds } from "@ringwright/core/units";
import type { Refusal, Says, Shown, Warning } from "@ringwright/core/workings";
import { type FieldValue, type Json, type Measured, surveyWith } from "@ringwright/logbook";
import { readTyping, type Typing } from "../../parts/quantity/typing.ts";
import type { Draft } from "./draft.ts";
import type { Known, Question } from "./question.ts";

/** A number that looks mistyped, or that this box has no room for. It is asked about and never forbidden. */
export interface Slip {
  /** Which of the numbers of the draft. */
  readonly at: number;
  readonly says: Says;
  /** What stands there, as typed with its unit. */
  readonly given: string;
  /** What was perhaps meant, as it would have been typed. */
  readonly meant: readonly Typing[];
}

/** The kind of quantity that a question's numbers are. */
export function kindOf({ asks }: Question): Kind | undefined {
  if (asks.is === "quantity") return asks.kind;
  return asks.is === "dimension" || asks.is === "clock-gaps" ? "length" : undefined;
}

/** What looks mistyped in a draft beside all that is known of the box, less what its writer is sure of. */
export function slipsOf(question: Question, draft: Draft, value: FieldValue, known: Known, facts: PlanFacts): readonly Slip[] {
  const kind = kindOf(question);
  if (kind === undefined) return [];
  const asked = warningsOf(question.field, value, known, facts);
  const filled = draft.typed.flatMap((typing, at) => (typing.text.trim() === "" ? [] : [{ typing, at }]));
  return filled.flatMap(({ typing, at }, place): Slip[] => {
    const read = readTyping(typing, kind, question.field);
    if (read.kind !== "read") return [];
    const given = read.measured.typed;
    const own = asked.find((warning) => concerns(warning, question.field, place, filled.length));
    if (own === undefined || draft.sure?.includes(given)) return [];
    return [{ at, given, says: own.says, meant: suggested(own).map((one) => asTyped(one, kind, read.unit)) }];
  });
}

/** Everything that is asked about with this value in its place, and what refuses the box because of it. */
function warningsOf(
  field: string,
  value: FieldValue,
  known: Known,
  facts: PlanFacts,
): readonly Pick<Warning, "input" | "says" | "suggestion">[] {
  const reader: Reader = { typed: new Map() };
  const read = surveyField.read(withTyped(known, field, value), "", reader);
  if (!read.ok) return [];
  const answer = plan(read.value as Survey, facts);
  if (!answer.ok) return [refusing(answer.refusal, field)];
  const slips = withSlips(read.value, reader.typed, facts.uncertainty.plausible, answer.warnings);
  return [...answer.value.refused.map(({ refusal }) => refusal), ...slips.filter((warning) => warning.kind === "slip")];
}

const across: ReadonlySet<string> = new Set(["shaft", "bore"]);

/** What refuses the whole box: shaft and bore refuse each other, whichever is typed last. */
function refusing({ input, says }: Refusal, field: string): Pick<Warning, "input" | "says"> {
  if (input === field || !across.has(input) || !across.has(field)) return { input, says };
  const { meant: _, ...shown } = says.with ?? {};
  return { input: field, says: { id: "bore-not-larger", with: shown } };
}

/** The question with one field as it was typed, so that what is asked can name it so. */
function withTyped(known: Known, field: string, value: FieldValue): Known {
  const texts = (list: readonly Measured[]): readonly string[] => list.map(({ typed }) => typed);
  if (typeof value !== "object" || value === null) return surveyWith(known, field, value);
  if (Array.isArray(value)) {
    const list = value as readonly (string | Measured)[];
    return surveyWith(
      known,
      field,
      list.map((one) => (typeof one === "string" ? one : one.typed)),
    );
  }
  if (!("readings" in value)) return surveyWith(known, field, (value as Measured).typed);
  const { readings, how } = value;
  const dimension: Json = { readings: texts(readings), ...(how === undefined ? {} : { how }) };
  return { ...known, [field]: dimension };
}

/** Whether a warning is about this number: its own reading, or the whole dimension when it is the last of them. */
function concerns({ input = "" }: Pick<Warning, "input">, field: string, place: number, count: number): boolean {
  const [, base = input, reading] = /^(.*?)(?:\.readings)?(?:\[(\d+)\])?$/u.exec(input) ?? [];
  if (base !== field) return false;
  return reading === undefined ? place === count - 1 : Number(reading) === place;
}

function suggested({ suggestion, says }: Pick<Warning, "suggestion" | "says">): readonly number[] {
  const { other, meant } = says.with ?? {};
  const values = [suggestion, numberIn(meant), says.id === "slip-meant-either" ? numberIn(other) : undefined];
  return [...new Set(values.filter((one) => typeof one === "number"))];
}

function numberIn(shown: Shown | undefined): number | undefined {
  return typeof shown === "object" ? shown.value : undefined;
}

/** An SI value as it would have been typed in a unit: a moved point to the last digit, another unit to four. */
function asTyped(value: number, kind: Kind, unit: string): Typing {
  const number = inUnit(kind, value as Kinds[Kind], unit);
  const exact = String(Number(number.toPrecision(9)));
  return { text: exact.replace(/\D/gu, "").length > 6 ? String(Number(number.toPrecision(4))) : exact, unit };
}
