import type { Citation } from "../sources/index.ts";
import type { Says, Shown, Step } from "../workings/index.ts";
import { noFigure } from "./cite-fact.ts";
import type { Confidence } from "./facts.ts";
import type { Limit } from "./limit.ts";
import type { Binding, Compared, ConstraintId, Reason, ReasonKind } from "./reason.ts";

/** How tight a verdict without figures counts, beside shares of a limit: our own proposal. */
const plainTightness: Readonly<Record<ReasonKind, number>> = { stop: 60, warn: 0.9, ask: 0.89, holds: 0, note: -1 };
const stopped = 100;

/** The sentences of one kind of comparison. */
export interface Verdicts {
  readonly constraint: ConstraintId;
  readonly holds: string;
  readonly warn: string;
  readonly stop: string;
  readonly ask: string;
  readonly clears: string;
  /** Said instead when another source would still allow what was given. */
  readonly clearsBySheet: string;
}

/** A given figure on its way to being compared. */
export interface Given {
  readonly value: number;
  readonly shown: Shown;
}

/** Collects what is said for and against one style, and keeps the tightest. */
export class Judge {
  readonly reasons: Reason[] = [];
  stops = 0;
  warnings = 0;
  asks = 0;
  /** The first stop, for what would clear it. */
  firstStop: Reason | undefined;
  /** Pressure and speed together. */
  index: Step | undefined;
  /** The step that prints the margin of the tightest constraint. */
  step: Step | undefined;
  #weight = -1;
  #reason: Reason | undefined;
  #compared: Compared | undefined;
  #seen = false;
  #confidence: Confidence = "D";

  /** Adds a reason. `share` says how much of its limit is used, where there is one. */
  add(reason: Reason, seen: boolean, confidence: Confidence, compared?: Compared, step?: Step): void {
    this.reasons.push(reason);
    if (reason.kind === "stop") {
      this.stops++;
      this.firstStop ??= reason;
    } else if (reason.kind === "warn") this.warnings++;
    else if (reason.kind === "ask") this.asks++;
    const plain = plainTightness[reason.kind];
    const tightness = compared ? Math.min(compared.share, plainTightness.stop - 1) : plain;
    const weight = reason.kind === "stop" ? stopped + tightness : tightness;
    if (weight <= this.#weight || (this.stops > 0 && reason.kind !== "stop")) return;
    this.#weight = weight;
    this.#reason = reason;
    this.#compared = compared;
    this.#seen = seen;
    this.#confidence = confidence;
    this.step = step;
  }

  say(kind: ReasonKind, constraint: ConstraintId, says: Says, citation: Citation, seen = false, clears?: Says): void {
    this.add(clears ? { kind, constraint, says, citation, clears } : { kind, constraint, says, citation }, seen, seen ? "B" : "C");
  }

  /** Compares a given figure with the most that is allowed (or the least), and stops at the figure itself or at the top of its spread. */
  compare(verdicts: Verdicts, limit: Limit, given: Given, share: number, least = false, stopsAt: "value" | "top" = "value"): void {
    const { constraint } = verdicts;
    if (Number.isFinite(limit.value)) {
      const sign = least ? -1 : 1;
      const over = sign * (given.value - (stopsAt === "top" ? limit.top : limit.value)) > 0;
      const kind = over ? "stop" : sign * (given.value - limit.warn) > 0 ? "warn" : "holds";
      const says: Says = { id: verdicts[kind], with: { given: given.shown, limit: limit.shown, top: limit.topShown } };
      const { citation } = limit;
      const margin = sign * (limit.value - given.value);
      const compared: Compared = { kind: limit.kind, given: given.value, limit: limit.value, margin, share };
      const step: Step = [limit.rule, [given.value, limit.value], margin];
      if (over) {
        const beyondAll = sign * (given.value - limit.top) > 0;
        const clears: Says = {
          id: beyondAll ? verdicts.clears : verdicts.clearsBySheet,
          with: { limit: limit.shown, top: limit.topShown },
        };
        this.add({ kind, constraint, says, citation, clears }, limit.seen, limit.confidence, compared, step);
      } else this.add({ kind, constraint, says, citation }, limit.seen, limit.confidence, compared, step);
    }
    if (limit.missing) {
      this.add({ kind: "ask", constraint, says: { id: verdicts.ask, with: { given: given.shown } }, citation: noFigure }, false, "D");
    }
  }

  /** The tightest constraint, or `nothing` when nothing could be compared. */
  binding(nothing: Reason): Binding {
    const { constraint, says, citation } = this.#reason ?? nothing;
    const base = { constraint, says, citation, seen: this.#seen, confidence: this.#confidence };
    return this.#compared ? { ...base, compared: this.#compared } : base;
  }
}
