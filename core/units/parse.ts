import type { Kind, Kinds } from "./quantity.ts";
import { siUnits } from "./quantity.ts";
import { findUnit, fromSi, toSi, type Unit, units, unitsOf } from "./unit.ts";

/** A quantity as a person gave it: the SI value, and exactly what was typed. */
export interface Typed<K extends Kind = Kind> {
  readonly kind: K;
  readonly value: Kinds[K];
  /** The text as typed, never rewritten. */
  readonly typed: string;
  /** The unit it was typed in, or the one shown beside the field. */
  readonly unit: string;
  /** Another reading of the same text, when three digits follow a single comma: `1,450 rpm`. */
  readonly mayMean?: Kinds[K];
}

/** Why a text is not a quantity of the kind asked for. */
export type Unread =
  | { readonly kind: "malformed"; readonly typed: string }
  | { readonly kind: "missing"; readonly typed: string; readonly allowed: readonly string[] }
  | {
      readonly kind: "wrong-unit";
      readonly typed: string;
      readonly unit: string;
      /** What a pressure was said to count from, where that is what does not fit. */
      readonly from?: "gauge" | "absolute";
      readonly allowed: readonly string[];
    }
  | { readonly kind: "outside-range"; readonly typed: string };

export type Parsed<K extends Kind> = { readonly ok: true; readonly quantity: Typed<K> } | { readonly ok: false; readonly unread: Unread };

const vulgar: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

/** Digits of other scripts as 0 to 9, one kind of space, minus and fraction stroke; vulgar fractions spelt out. */
function tidyNumber(text: string): string {
  return text
    .replace(/[٠-٩]/gu, (digit) => String(digit.charCodeAt(0) - 0x0660))
    .replace(/[０-９]/gu, (digit) => String(digit.charCodeAt(0) - 0xff10))
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/gu, (mark) => ` ${vulgar[mark]}`)
    .replace(/[⁄∕]/gu, "/")
    .replace(/[−–]/gu, "-")
    .replace(/٫/gu, ",")
    .replace(/\s+/gu, " ")
    .trim();
}

const decimal = String.raw`(?:\d{1,3}(?: \d{3})+|\d+)(?:[.,]\d+)?|[.,]\d+`;
const grammar = new RegExp(
  String.raw`^(?<sign>[+-]?) ?(?:(?:(?<whole>\d+)[ -])?(?<num>\d+) ?/ ?(?<den>\d+)|(?<decimal>${decimal})(?<power>[eE][+-]?\d+)?)(?: ?(?<unit>1/min|[^\d\s.,+-].*))?$`,
  "u",
);
const feetAndInches = /^(?<feet>\d+) ?['′’](?!['′’]) ?(?<inches>\d.*)$/u;

interface ReadNumber {
  readonly value: number;
  readonly mayMean?: number;
  readonly unit: string;
}

function readNumber(text: string): ReadNumber | undefined {
  const groups = grammar.exec(text)?.groups;
  if (!groups) return undefined;
  const sign = groups.sign === "-" ? -1 : 1;
  const unit = groups.unit ?? "";
  if (groups.num !== undefined && groups.den !== undefined) {
    const den = Number(groups.den);
    if (den === 0) return undefined;
    return { value: sign * (Number(groups.whole ?? 0) + Number(groups.num) / den), unit };
  }
  const digits = (groups.decimal ?? "").replace(/ /gu, "");
  const power = groups.power ?? "";
  const value = sign * Number(digits.replace(",", ".") + power);
  const thousands = /^\d{1,3},\d{3}$/u.test(digits) && !digits.startsWith("0");
  return thousands ? { value, mayMean: sign * Number(digits.replace(",", "") + power), unit } : { value, unit };
}

/** Feet and inches, as `1' 2 1/2"`: inches in all. */
function readFeet(text: string): ReadNumber | undefined {
  const groups = feetAndInches.exec(text)?.groups;
  const inches = readNumber(groups?.inches ?? "");
  if (!inches || (inches.unit !== "" && findUnit(inches.unit)?.symbol !== "in")) return undefined;
  return { value: Number(groups?.feet) * 12 + inches.value, unit: "in" };
}

/** What a pressure unit says about where it counts from: `bar(g)`, `psia`. */
function reference(text: string): { unit: string; from?: "gauge" | "absolute" } {
  const found =
    /^(?<unit>bar|psi|kPa|MPa|mbar|Pa|kgf?\/cm[2²])\s*(?:\(\s*(?<bracket>g|a|abs|gauge|absolute)\.?\s*\)|(?<letter>[ga])|\s(?<word>abs|gauge|absolute)\.?)$/iu.exec(
      text,
    );
  if (!found?.groups) return { unit: text };
  const mark = (found.groups.bracket ?? found.groups.letter ?? found.groups.word ?? "").toLowerCase();
  return { unit: found.groups.unit ?? "", from: mark.startsWith("a") ? "absolute" : "gauge" };
}

/** The units of a kind, as a person may write them. */
export function allowedUnits(kind: Kind): readonly string[] {
  return unitsOf(kind).map((unit) => unit.symbol);
}

/** Finds the unit for a kind, minding what a pressure counts from. */
function unitFor(kind: Kind, text: string): Unit | undefined {
  const { unit: bare, from } = reference(text);
  if (from === "absolute" && kind !== "absolute-pressure") return undefined;
  if (from === "gauge" && kind !== "pressure") return undefined;
  // Beside an angle or a temperature the bare degree sign is an angle; inch and foot marks are lengths.
  // A pound is a force where a force is asked for.
  const found = findUnit(bare);
  const unit = kind === "force" && found?.symbol === "lb" ? units.get("lbf") : found;
  return unit?.kinds.includes(kind) ? unit : undefined;
}

/**
 * Reads a quantity as people write it: `45 mm`, `1 3/4 in`, `1-3/4"`, `2,5 bar`,
 * `80 °C`. A number without a unit takes `beside`, the unit shown next to the
 * field; with none shown, the unit is missing. Case of units is forgiven where
 * nothing else could be meant.
 *
 * Errors are returned: not a number, no unit, a unit of another kind (a gauge
 * reading where absolute is asked counts as one), or too large to be a number.
 * @example parseQuantity("1 3/4 in", "length") // value 0.04445
 */
export function parseQuantity<K extends Kind>(typed: string, kind: K, beside?: string): Parsed<K> {
  const text = tidyNumber(typed.slice(0, 200));
  const number = kind === "length" ? (readFeet(text) ?? readNumber(text)) : readNumber(text);
  if (!number || typed.length > 200) return { ok: false, unread: { kind: "malformed", typed } };
  const spelt = number.unit.trim() || beside;
  const allowed = allowedUnits(kind);
  if (!spelt) return { ok: false, unread: { kind: "missing", typed, allowed } };
  const unit = unitFor(kind, spelt);
  if (!unit) return { ok: false, unread: wrongUnit(typed, kind, spelt) };
  return finish(typed, kind, number, unit);
}

function wrongUnit(typed: string, kind: Kind, unit: string): Unread {
  const { from } = reference(unit);
  const other = (from === "absolute" && kind === "pressure") || (from === "gauge" && kind === "absolute-pressure");
  return { kind: "wrong-unit", typed, unit, ...(from && other ? { from } : {}), allowed: allowedUnits(kind) };
}

function finish<K extends Kind>(typed: string, kind: K, number: ReadNumber, unit: Unit): Parsed<K> {
  const value = toSi(kind, number.value, unit);
  if (!Number.isFinite(value)) return { ok: false, unread: { kind: "outside-range", typed } };
  const quantity = { kind, value, typed, unit: unit.symbol };
  if (number.mayMean === undefined) return { ok: true, quantity };
  return { ok: true, quantity: { ...quantity, mayMean: toSi(kind, number.mayMean, unit) } };
}

/**
 * A quantity from a number and a unit as sent by a program. The number itself
 * is the typed text. Errors as `parseQuantity`.
 */
export function readQuantity<K extends Kind>(value: number, spelt: string, kind: K): Parsed<K> {
  const typed = `${value} ${spelt}`;
  if (!Number.isFinite(value)) return { ok: false, unread: { kind: "outside-range", typed } };
  const unit = unitFor(kind, spelt);
  if (!unit) return { ok: false, unread: wrongUnit(typed, kind, spelt) };
  return finish(typed, kind, { value, unit: spelt }, unit);
}

/**
 * The same quantity seen in another unit. The SI value and the typed text do
 * not change, so any number of toggles changes nothing; in the unit it was
 * typed in, the number shown is the typed one.
 */
export function seenIn<K extends Kind>(given: Typed<K>, symbol: string): { readonly value: number; readonly unit: string } {
  const unit = units.get(symbol) ?? units.get(siUnits[given.kind]);
  if (!unit) return { value: given.value, unit: siUnits[given.kind] };
  const typed = unit.symbol === given.unit ? readNumber(tidyNumber(given.typed)) : undefined;
  return { value: typed?.value ?? fromSi(given.kind, given.value, unit), unit: unit.symbol };
}
