import { unreadId } from "@ringwright/answers";
import { type Kind, type Kinds, parseQuantity, shownUnit, siUnits, type UnitSystem, unitText } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import type { Measured } from "@ringwright/logbook";

/**
 * A number as it stands in its field, with the unit that stood beside it when
 * it was begun. The unit stays with the number: whoever then looks at the page
 * in other units, or finds the draft a day later, reads what was meant.
 */
export interface Typing {
  readonly text: string;
  /** Symbol of the unit beside the field. */
  readonly unit: string;
}

export const nothingTyped: Typing = { text: "", unit: "" };

/** What a typed number comes to. */
export type ReadTyping<K extends Kind = Kind> =
  | { readonly kind: "empty" }
  | {
      readonly kind: "read";
      readonly value: Kinds[K];
      /** Symbol of the unit it was read in. */
      readonly unit: string;
      /** What the entry keeps: the SI value, and what was typed with its unit. */
      readonly measured: Measured;
    }
  | { readonly kind: "refused"; readonly says: Says };

/** Reads a number as typed, with the unit beside the field where it has none of its own. */
export function readTyping<K extends Kind>({ text, unit }: Typing, kind: K, input: string): ReadTyping<K> {
  const typed = text.trim();
  if (typed === "") return { kind: "empty" };
  const alone = parseQuantity(typed, kind);
  const bare = !alone.ok && alone.unread.kind === "missing";
  const parsed = bare ? parseQuantity(typed, kind, unit) : alone;
  if (!parsed.ok) {
    const { unread } = parsed;
    const allowed = "allowed" in unread ? { allowed: unread.allowed.map(unitText).join(", ") } : {};
    return { kind: "refused", says: { id: unreadId(unread), with: { input, given: typed, ...allowed } } };
  }
  const { value, unit: symbol } = parsed.quantity;
  return {
    kind: "read",
    value,
    unit: symbol,
    measured: { value, unit: siUnits[kind], typed: bare ? `${typed} ${unitText(unit)}` : typed },
  };
}

/** The unit to stand beside a field: that of what is typed there, else the reader's. */
export function unitBeside({ text, unit }: Typing, kind: Kind, system: UnitSystem): string {
  return text === "" || unit === "" ? shownUnit(kind, system) : unit;
}

/** The other unit that a tap brings; none where both systems use the same. */
export function otherUnit(unit: string, kind: Kind): string | undefined {
  const [metric, inch] = [shownUnit(kind, "metric"), shownUnit(kind, "inch")];
  if (metric === inch) return undefined;
  return unit === inch ? metric : inch;
}

/** Kinds that may count below nought. */
export function mayBeNegative(kind: Kind): boolean {
  return kind === "temperature" || kind === "pressure" || kind === "temperature-difference";
}

/** A number in its field as the text of a draft: what was typed, and the unit on a line of its own. */
export function draftOf({ text, unit }: Typing): string {
  return `${text}\n${unit}`;
}

/** What a draft says stands in the field. */
export function typingOf(draft: string | undefined): Typing {
  if (draft === undefined) return nothingTyped;
  const [text = "", unit = ""] = draft.split("\n");
  return { text, unit };
}
