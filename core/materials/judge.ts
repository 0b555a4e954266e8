import type { Citation } from "../sources/index.ts";
import { quantity } from "../units/index.ts";
import type { Rule, Says, Shown, Step } from "../workings/index.ts";
import { noFigure } from "./cite-fact.ts";
import type { Confidence } from "./facts.ts";
import type { Limit } from "./limit.ts";
import type { Binding, ConstraintId, Reason, ReasonKind } from "./reason.ts";

/** How tight a verdict without figures counts, beside shares of a limit: our own proposal. */
const plainTightness: Readonly<Record<ReasonKind, number>> = { stop: 60, warn: 0.9, ask: 0.89, holds: 0, note: -1 };
const stopped = 100;
const freezing = quantity("temperature", 0, "degC");

/** The sentences of one kind of comparison. */
export interface Verdicts {
  readonly constraint: ConstraintId;
  readonly holds: string;
  readonly warn: string;
  readonly stop: string;
  readonly ask: string;
  /** Left out where nothing but another material helps. */
  readonly clears?: string;
  /** Said instead when another source would still allow what was given. */
  readonly clearsBySheet: string;
}

/** A given figure on its way to being compared. */
export interface Given {
  readonly value: number;
  readonly shown: Shown;
}

/** Where a limit is the least allowed, and where it stops: at the figure itself or at the most that any source gives. */
export interface Manner {
  readonly least: boolean;
  readonly stopsAt: "value" | "top";
}
export const most: Manner = { least: false, stopsAt: "value" };
export const least: Manner = { least: true, stopsAt: "value" };
export const mostOfAny: Manner = { least: false, stopsAt: "top" };

/** What a comparison needs to keep of its limit. */
type Line = Pick<Limit, "kind" | "value" | "rule">;

/** Collects what is said for and against one style, and keeps the tightest. */
export class Judge {
  readonly reasons: Reason[] = [];
  /** Constraints whose figure, a tenth higher or lower, would come out the other way. */
  readonly swings: ConstraintId[] = [];
  stops = 0;
  warnings = 0;
  /** Of the warnings, those of chemistry. */
  chemistryWarnings = 0;
  asks = 0;
  /** The first stop, for what would clear it. */
  firstStop: Reason | undefined;
  /** Pressure and speed together. */
  index: Step | undefined;
  #weight = -1;
  #reason: Reason | undefined;
  #seen = false;
  #confidence: Confidence = "D";
  #line: Line | undefined;
  #given = 0;
  #least = false;
  #share = 0;

  /** Counts a reason; says whether it is the tightest so far. */
  #count(reason: Reason, tightness: number, seen: boolean, confidence: Confidence): boolean {
    this.reasons.push(reason);
    const { kind } = reason;
    if (kind === "stop") {
      this.stops++;
      this.firstStop ??= reason;
    } else if (kind === "warn") {
      this.warnings++;
      if (reason.constraint === "chemistry") this.chemistryWarnings++;
    } else if (kind === "ask") this.asks++;
    const weight = kind === "stop" ? stopped + tightness : tightness;
    if (weight <= this.#weight || (this.stops > 0 && kind !== "stop")) return false;
    this.#weight = weight;
    this.#reason = reason;
    this.#seen = seen;
    this.#confidence = confidence;
    return true;
  }

  /** Adds a reason without figures. */
  add(reason: Reason, seen: boolean, confidence: Confidence): void {
    if (this.#count(reason, plainTightness[reason.kind], seen, confidence)) this.#line = undefined;
  }

  /** Adds a reason for a figure, of which `share` of its limit is used. */
  weigh(reason: Reason, line: Line, given: number, share: number, isLeast: boolean, seen: boolean, confidence: Confidence): void {
    const tightness = Math.min(share, plainTightness.stop - 1);
    if (!this.#count(reason, tightness, seen, confidence)) return;
    this.#line = line;
    this.#given = given;
    this.#least = isLeast;
    this.#share = share;
  }

  say(kind: ReasonKind, constraint: ConstraintId, says: Says, citation: Citation, seen = false, clears?: Says): void {
    this.add(clears ? { kind, constraint, says, citation, clears } : { kind, constraint, says, citation }, seen, seen ? "B" : "C");
  }

  /** Compares a given figure with a limit, of which it uses `share`. */
  compare(verdicts: Verdicts, limit: Limit, given: Given, share: number, manner: Manner): void {
    const { constraint } = verdicts;
    const { value } = given;
    if (Number.isFinite(limit.value)) {
      const sign = manner.least ? -1 : 1;
      const stop = manner.stopsAt === "top" ? limit.top : limit.value;
      const over = sign * (value - stop) > 0;
      const kind = over ? "stop" : sign * (value - limit.warn) > 0 ? "warn" : "holds";
      const says: Says = { id: verdicts[kind], with: { given: given.shown, limit: limit.shown, top: limit.topShown } };
      const { citation } = limit;
      const clears = over ? clearing(verdicts, limit, sign * (value - limit.top) > 0) : undefined;
      const reason: Reason = clears ? { kind, constraint, says, citation, clears } : { kind, constraint, says, citation };
      this.weigh(reason, limit, value, share, manner.least, limit.seen, limit.confidence);
      // A tenth of a temperature is a tenth of its degrees Celsius.
      const off = Math.abs(limit.kind === "temperature" ? value - freezing : value) / 10;
      if (Math.abs(value - stop) < off && !this.swings.includes(constraint)) this.swings.push(constraint);
    }
    if (limit.missing)
      this.add({ kind: "ask", constraint, says: { id: verdicts.ask, with: { given: given.shown } }, citation: noFigure }, false, "D");
  }

  /** The step that prints the margin of the tightest constraint, if it has one. */
  writeMargin(write: (rule: Rule, inputs: readonly number[], margin: number) => void): void {
    if (this.#line) write(this.#line.rule, [this.#given, this.#line.value], this.#margin());
  }

  #margin(): number {
    const limit = this.#line?.value ?? 0;
    return this.#least ? this.#given - limit : limit - this.#given;
  }

  /** The tightest constraint, or `nothing` when nothing could be compared. */
  binding(nothing: Reason): Binding {
    const { constraint, says, citation } = this.#reason ?? nothing;
    const line = this.#line;
    if (!line) return { constraint, says, citation, seen: this.#seen, confidence: this.#confidence };
    const compared = { kind: line.kind, given: this.#given, limit: line.value, margin: this.#margin(), share: this.#share };
    return { constraint, says, citation, seen: this.#seen, confidence: this.#confidence, compared };
  }
}

function clearing(verdicts: Verdicts, limit: Limit, beyondAll: boolean): Says | undefined {
  const id = beyondAll ? verdicts.clears : verdicts.clearsBySheet;
  return id === undefined ? undefined : { id, with: { limit: limit.shown, top: limit.topShown } };
}
