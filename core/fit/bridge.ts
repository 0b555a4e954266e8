import { type Answer, begin, outside, refuse } from "../workings/index.ts";
import type { FitFacts } from "./fit-steps.ts";
import { stepGroups } from "./step.ts";

/** A step that can't be done, and who carries the make-do until when. */
export interface BridgeGiven {
  /** Id of the step as in data/, or with its ring number behind it. */
  readonly step: string;
  readonly reason: string;
  readonly owner: string;
  /** Last day of the make-do, `2026-03-31`. */
  readonly until: string;
  /** Today, in the same writing. */
  readonly today: string;
  /** Old rings that stay in the box. */
  readonly ringsLeftIn?: number;
}

export interface Bridge {
  readonly step: string;
  readonly reason: string;
  readonly owner: string;
  readonly until: string;
  readonly ringsLeftIn: number;
}

const day = /^(\d{4})-(\d{2})-(\d{2})$/u;
const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/**
 * Turns "can't do it" into a make-do with an owner and an end date, or says
 * that there is no way past the step. Rings left in are counted, not hidden.
 *
 * Units: dates as year-month-day, rings a count.
 * Range: step and reason from the lists in data/steps; end date after today; 0 to 40 rings. Refused otherwise.
 * Source: own-proposal.
 * @example bridge({ step: "step-runout", reason: "no-gauge", owner: "shift fitter", until: "2026-03-31", today: "2026-03-01" }, facts)
 */
export function bridge(given: BridgeGiven, facts: FitFacts): Answer<Bridge> {
  const { step, reason, owner, until, today, ringsLeftIn = 0 } = given;
  const id = step.replace(/-\d+$/u, "");
  const fact = stepGroups.flatMap((group) => facts.groups[group] ?? []).find((entry) => entry.id === step || entry.id === id);
  if (fact === undefined)
    return refuse({ kind: "not-known", input: "step", given: step, says: { id: "fit-step-not-in-list", with: { step } } });
  if (fact.without === "stop") return refuse({ kind: "impossible", input: "step", given: step, says: { id: "fit-no-way-past" } });
  const reasons = [...(fact.also ?? []), ...facts.reasons];
  if (!reasons.includes(reason)) {
    return refuse({
      kind: "not-known",
      input: "reason",
      given: reason,
      allowed: reasons,
      says: { id: "fit-reason-not-in-list", with: { reason } },
    });
  }
  if (owner.trim() === "") return refuse({ kind: "impossible", input: "owner", given: owner, says: { id: "fit-bridge-owner" } });
  for (const [input, date] of [
    ["until", until],
    ["today", today],
  ] as const) {
    if (!isDay(date)) return refuse({ kind: "impossible", input, given: date, says: { id: "fit-bridge-until" } });
  }
  if (until <= today) return refuse({ kind: "impossible", input: "until", given: until, says: { id: "fit-bridge-over" } });
  const refused = outside([["ringsLeftIn", ringsLeftIn, { min: 0, max: 40 }, "1"]]);
  if (refused) return refused;
  const work = begin();
  if (ringsLeftIn > 0)
    work.warn({ kind: "limit", input: "ringsLeftIn", given: ringsLeftIn, says: { id: "fit-rings-left", with: { rings: ringsLeftIn } } });
  return work.found({ step, reason, owner, until, ringsLeftIn });
}

function isDay(text: string): boolean {
  const found = day.exec(text);
  if (found === null) return false;
  const [year, month, date] = found.slice(1).map(Number) as [number, number, number];
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = monthDays[month - 1];
  return days !== undefined && date >= 1 && date <= days + (month === 2 && leap ? 1 : 0);
}
