import { type Length, readQuantity } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import type { Bodies, Json, Measured } from "./entry.ts";
import { shownAt } from "./fold/standing.ts";
import type { BoxState, Job, Said } from "./fold/state.ts";
import { isGroup } from "./shapes.ts";
import { disagreements, repackLimit, standing, surveyOf } from "./survey.ts";
import { startOfDay } from "./time.ts";

/** The one thing to do next for a box. */
export interface Next {
  readonly does: "end-bridge" | "settle" | "measure" | "choose" | "fit" | "run-in" | "round" | "repack";
  /** In words, by id. */
  readonly says: Says;
  /** Fields to settle, measure or choose, in that order. */
  readonly fields?: readonly string[];
  readonly job?: string;
  /** The bridge that is past its day, the start that is run in, the reading that says repack. */
  readonly entry?: string;
}

const hour = 3_600_000;
/** After a week of running a set is no longer run in but looked after: common practice, no source. */
const runInHours = 168;
const measures = ["shaft", "bore", "depth"];

/**
 * The one thing to do next for a box, most pressing first: a bridge past its
 * day, fields that devices disagree on, repacking that is due, then what leads
 * to a packed box and keeps it: measure, choose, fit, run in, rounds.
 *
 * @param now milliseconds since 1970, by the clock of the device
 */
export function nextFor(state: BoxState, now: number, limits: { readonly repackAtGap?: Length } = {}): Next {
  const job = state.jobs.at(-1);
  const running = job?.started === undefined ? undefined : { job, started: job.started };
  return (
    pastBridge(state, now) ??
    disagreement(state) ??
    (job && !running ? undefined : repack(state, running?.started, limits.repackAtGap ?? houseGap(state))) ??
    (running ? tend(state, running.job, running.started, now) : (toMeasure(state) ?? toChoose(state) ?? fit(job)))
  );
}

/** Bridges count until they are crossed out, said again with a later day, or their step is done after all. */
function pastBridge({ bridges, jobs }: BoxState, now: number): Next | undefined {
  const newest = new Map(bridges.map((bridge) => [matterOf(bridge.value), bridge]));
  const [worst] = [...newest.values()]
    .filter(({ value: { job, step, until } }) => {
      const done = jobs.find(({ id }) => id === job)?.steps.get(step ?? "");
      return now >= startOfDay(until) + 24 * hour && !isDone(standing(done));
    })
    .sort((one, other) => (one.value.until < other.value.until ? -1 : 1));
  if (!worst) return undefined;
  const { why, owner, until } = worst.value;
  return { does: "end-bridge", says: { id: "next-end-bridge", with: { typed: why, owner, until } }, entry: worst.entry };
}

function matterOf({ job, step, why }: Bodies["bridge"]): string {
  return JSON.stringify(job === undefined || step === undefined ? [why] : [job, step]);
}

function isDone(step: Bodies["fit-step"] | undefined): boolean {
  return step !== undefined && step.cannot === undefined && step.found !== null;
}

function disagreement(state: BoxState): Next | undefined {
  const fields = disagreements(state);
  const [first] = fields;
  if (first === undefined) return undefined;
  return { does: "settle", says: { id: "next-settle", with: { input: first } }, fields };
}

/** The gland gap at which the site repacks this box, where somebody set one. */
function houseGap({ limits }: BoxState): Length | undefined {
  return lengthOf(standing(limits.get(repackLimit))?.value ?? null);
}

/** Due when the newest gap read since the set was started is at the limit. Which is newer goes by the order of display. */
function repack({ readings, entries }: BoxState, started: Said<unknown> | undefined, limit: Length | undefined): Next | undefined {
  if (limit === undefined) return undefined;
  const places = new Map(entries.map(({ entry }, place) => [entry.id, place]));
  const since = started === undefined ? entries.length : (places.get(started.entry) ?? entries.length);
  const read = readings.toReversed().flatMap((reading) => {
    const gap = reading.value.what === "gland-gap" ? lengthOf(reading.value.value) : undefined;
    return gap === undefined ? [] : [{ gap, entry: reading.entry }];
  });
  const [newest] = read;
  if (!newest || newest.gap > limit || (places.get(newest.entry) ?? 0) > since) return undefined;
  return { does: "repack", says: { id: "next-repack", with: { gap: { value: newest.gap, kind: "length" } } }, entry: newest.entry };
}

function lengthOf(value: Bodies["reading"]["value"]): Length | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { value: number, unit }: Measured = value;
  const read = readQuantity(number, unit, "length");
  return read.ok ? read.quantity.value : undefined;
}

function toMeasure(state: BoxState): Next | undefined {
  const survey = surveyOf(state);
  const fields = measures.filter((field) => !isMeasured(survey[field]));
  if (!isSaid(survey.motion)) return { does: "measure", says: { id: "next-motion" }, fields: ["motion", ...fields] };
  const [first, second, third] = fields;
  if (first === undefined) return undefined;
  const says: Says =
    second === undefined
      ? { id: "next-measure", with: { first } }
      : third === undefined
        ? { id: "next-measure-two", with: { first, second } }
        : { id: "next-measure-three", with: { first, second, third } };
  return { does: "measure", says, fields };
}

/** Whether a dimension has a reading at least. */
function isMeasured(said: Json | undefined): boolean {
  if (!isGroup(said)) return typeof said === "string" && isSaid(said);
  const { readings, planes, value } = said;
  return [readings, planes].some((list) => Array.isArray(list) && list.flat().length > 0) || typeof value === "number";
}

function isSaid(said: Json | undefined): boolean {
  return said !== undefined && said !== null && said !== "" && said !== "don't know";
}

function toChoose({ fields }: BoxState): Next | undefined {
  const style = isSaid(standing(fields.get("set.style")) as Json | undefined);
  const rings = isSaid(standing(fields.get("set.rings")) as Json | undefined);
  if (style && rings) return undefined;
  const open = [...(style ? [] : ["set.style"]), ...(rings ? [] : ["set.rings"])];
  const id = open.length === 2 ? "next-choose-both" : style ? "next-choose-rings" : "next-choose-packing";
  return { does: "choose", says: { id }, fields: open };
}

function fit(job: Job | undefined): Next {
  if (!job) return { does: "fit", says: { id: "next-fit" } };
  const steps = [...job.steps.values()].filter((fact) => isDone(standing(fact))).length;
  return { does: "fit", says: { id: steps === 1 ? "next-fit-one" : "next-fit-on", with: { steps } }, job: job.id };
}

function tend({ entries }: BoxState, job: Job, started: Said<unknown>, now: number): Next {
  const start = entries.find(({ entry }) => entry.id === started.entry);
  const since = start ? now - shownAt(start.entry) : Number.POSITIVE_INFINITY;
  // A clock that is behind the one that wrote the start: it has just begun.
  const hours = Math.max(0, Math.floor(since / hour));
  if (since >= runInHours * hour) return { does: "round", says: { id: "next-round" }, job: job.id, entry: started.entry };
  return { does: "run-in", says: { id: "next-run-in", with: { hours } }, job: job.id, entry: started.entry };
}
