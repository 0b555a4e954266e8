import type { Kind } from "@ringwright/core/units";
import { inUnit, siUnits, unitText } from "@ringwright/core/units";
import { surveyField as planField } from "@ringwright/core/plan";
import type { Says, Warning } from "@ringwright/core/workings";
import type { Planned } from "../../kept/box.ts";
import { readTyping, type Typing } from "../../parts/quantity/typing.ts";
import type { Draft } from "./draft.ts";
import type { Question } from "./question.ts";

/** A number that looks mistyped. It is asked about and never refused. */
export interface Slip {
  /** Which of the numbers of the draft. */
  readonly at: number;
  readonly says: Says;
  /** What stands there, as typed with its unit. */
  readonly given: string;
  /** What was perhaps meant, as it would have been typed. */
  readonly meant?: Typing;
}

/** The kind of quantity that a question's numbers are. */
export function kindOf({ asks }: Question): Kind | undefined {
  return asks.is === "quantity" ? asks.kind : asks.is === "dimension" || asks.is === "clock-gaps" ? "length" : undefined;
}

/** What looks mistyped in a draft, less what its writer is sure of: as the plan with this draft asks, and where a comma may mean thousands. */
export function slipsOf(question: Question, draft: Draft, planned: Planned): readonly Slip[] {
  const kind = kindOf(question);
  if (kind === undefined) return [];
  const asked = planned.kind === "planned" && planned.answer.ok ? planned.answer.warnings : [];
  const found: Slip[] = [];
  const filled = draft.typed.flatMap((typing, at) => (typing.text.trim() === "" ? [] : [{ typing, at }]));
  for (const [place, { typing, at }] of filled.entries()) {
    const read = readTyping(typing, kind, question.field);
    if (read.kind !== "read" || draft.sure?.includes(read.measured.typed)) continue;
    const given = read.measured.typed;
    const own = asked.find((warning) => warning.kind === "slip" && concerns(warning, question.field, place, filled.length));
    if (read.mayMean !== undefined && own === undefined) {
      const with_ = { input: question.field, typed: given, read: { value: read.value, kind }, other: { value: read.mayMean, kind } };
      found.push({ at, given, says: { id: "comma-or-thousands", with: with_ }, meant: { ...typing, text: typing.text.replace(",", "") } });
    } else if (own !== undefined) {
      found.push({
        at,
        given,
        says: own.says,
        ...(typeof own.suggestion === "number" ? { meant: asTyped(own.suggestion, kind, typing) } : {}),
      });
    }
  }
  return found;
}

/** Whether a warning is about this number: its own reading, or the whole dimension when it is the last of them. */
function concerns({ input = "" }: Warning, field: string, place: number, count: number): boolean {
  const [, base = input, reading] = /^(.*?)(?:\.?readings)?(?:\[(\d+)\])?$/u.exec(input) ?? [];
  if (base !== field && planField(base) !== field) return false;
  return reading === undefined ? place === count - 1 : Number(reading) === place;
}

/** An SI value as it would have been typed beside this field, to nine figures. */
function asTyped(value: number, kind: Kind, typing: Typing): Typing {
  const read = readTyping(typing, kind, "");
  const unit = typing.unit || (read.kind === "read" ? /[^\d\s.,/+-].*$/u.exec(read.measured.typed)?.[0] : undefined) || siUnits[kind];
  const known = readTyping({ text: "1", unit }, kind, "").kind === "read" ? unit : siUnits[kind];
  return { text: String(Number(inUnit(kind, value as never, known).toPrecision(9))), unit: known };
}

/** A number as it stands with its unit. */
export function shownTyping({ text, unit }: Typing): string {
  return unit === "" ? text : `${text} ${unitText(unit)}`;
}
