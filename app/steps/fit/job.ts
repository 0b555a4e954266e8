import type { Step } from "@ringwright/core/fit";
import { type Bodies, type BoxState, type Fact, type Job, type Measured, standing } from "@ringwright/logbook";
import { verdictOn } from "./verdict.ts";

type Written = Bodies["fit-step"];

/**
 * How a step stands in a job. `off`: a number was found that says stop.
 * `bridged`: not done, with a make-do. `stopped`: not done, and no way past it.
 */
export type Standing = "open" | "done" | "off" | "bridged" | "stopped";

/** The job under way: the newest that has not been started. */
export function jobUnderWay({ jobs }: BoxState): Job | undefined {
  const last = jobs.at(-1);
  return last?.started === undefined ? last : undefined;
}

/** What was written down for a step; where devices disagree, the newest. */
export function writtenFor(job: Job | undefined, step: string): Written | undefined {
  return standing(job?.steps.get(step));
}

/** Whether two devices wrote a step down differently. */
export function disagrees(job: Job | undefined, step: string): boolean {
  const fact: Fact<Written> | undefined = job?.steps.get(step);
  return (fact?.standing.length ?? 0) > 1;
}

/** The number of an answer, in SI. */
export function numberOf(found: Written["found"] | undefined): number | undefined {
  if (typeof found === "number") return found;
  return typeof found === "object" && found !== null && "value" in found ? (found as Measured).value : undefined;
}

export function standingOf(step: Step, written: Written | undefined): Standing {
  if (written === undefined) return "open";
  if (written.cannot !== undefined) return step.bridge ? "bridged" : "stopped";
  if (written.found === null) return "open";
  const number = numberOf(written.found);
  return number !== undefined && verdictOn(step, number, numberOf(written.expected)).tone === "stop" ? "off" : "done";
}

/**
 * Where to go on: the place that was left on this device, while it is in the
 * plan and not done yet; else the first step with nothing written down; else
 * the last.
 */
export function whereToGoOn(steps: readonly Step[], job: Job | undefined, left: string | undefined): string | undefined {
  const place = steps.find(({ id }) => id === left);
  if (place && standingOf(place, writtenFor(job, place.id)) !== "done") return place.id;
  return (steps.find((step) => standingOf(step, writtenFor(job, step.id)) === "open") ?? steps.at(-1))?.id;
}

/** Steps without a way past that are not done, up to a step. */
export function openStops(steps: readonly Step[], job: Job | undefined, before: string): readonly Step[] {
  const end = steps.findIndex(({ id }) => id === before);
  return steps.slice(0, Math.max(0, end)).filter((step) => !step.bridge && standingOf(step, writtenFor(job, step.id)) !== "done");
}

/** What was written last into a blank of that name, or a person into another, to offer it again. */
export function writtenBefore(job: Job | undefined, blank: string): readonly string[] {
  const person = isPerson(blank);
  const said = [...(job?.steps.values() ?? [])].flatMap((fact) => fact.standing);
  const newest = [...said].sort((one, other) => (one.at < other.at ? 1 : -1));
  const found = newest.flatMap(({ value: { blanks = {} } }) =>
    Object.entries(blanks).flatMap(([name, text]) => (name === blank || (person && isPerson(name)) ? [text.trim()] : [])),
  );
  return [...new Set(found)].filter((text) => text !== "").slice(0, 3);
}

function isPerson(blank: string): boolean {
  return /-(?:by|to)$/u.test(blank) && blank !== "drained-to";
}
