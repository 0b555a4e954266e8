import { isStem } from "../box/index.ts";
import { type Case, type CautionFacts, openCase, refuseCase, type Seating } from "../cautions/index.ts";
import { type Expected, expand, type FitFacts, filmOf, type SettingFact, Settings, type Step, type StepFacts } from "../fit/index.ts";
import type { Temperature, TemperatureDifference, Torque } from "../units/index.ts";
import { type Answer, begin, rule } from "../workings/index.ts";
import { sameFor } from "./for-case.ts";
import { refuseNoFilm, refuseRunIn } from "./refuse-run-in.ts";
import { type ScheduleFact, type Spread, spreadOf } from "./schedule.ts";
import type { StopRule, StopRuleFact } from "./stop-rules.ts";

export interface RunInFacts {
  readonly groups: StepFacts;
  readonly settings: readonly SettingFact[];
  readonly schedules: readonly ScheduleFact[];
  readonly stopRules: readonly StopRuleFact[];
}

/** What the first hours depend on, beside the case. */
export interface RunInGiven extends Case {
  /** Drops a minute that the site aims for on this turning shaft. */
  readonly dripLow?: number;
  readonly dripHigh?: number;
  /** The lowest limit of packing, flush and product at this box. */
  readonly temperatureLimit?: Temperature;
  /** Of each nut of a stem's gland, from its load. */
  readonly torque?: Torque;
}

export interface RunInPlan {
  readonly film: "product" | "flush" | "grease" | "none";
  readonly seating: Seating;
  /** Closing, start, run, settling and later looks, in order. */
  readonly steps: readonly Step[];
  readonly stopRules: readonly StopRule[];
  readonly spread: Spread;
  /** Drops a minute; never for a stem. */
  readonly aim?: { readonly low: number; readonly high: number };
  /** From here no more tightening while it still climbs. */
  readonly holdAt?: Temperature;
}

const holdRule = rule({
  id: "hold-temperature",
  symbol: "T_h",
  expression: "T_max − ΔT",
  unit: "K",
  inputs: [
    { symbol: "T_max", name: "temperatureLimit", unit: "K" },
    { symbol: "ΔT", name: "hold-below-limit", unit: "K" },
  ],
  citation: { source: "own-proposal", at: "hold when within this of the limit and still climbing" },
});

const rodRule = rule({
  id: "rod-box-temperature",
  symbol: "T_rod",
  expression: "T_liquid + ΔT",
  unit: "K",
  inputs: [
    { symbol: "T_liquid", name: "temperature", unit: "K" },
    { symbol: "ΔT", name: "rod-rise", unit: "K" },
  ],
  citation: { source: "bloch-geitner-maintenance", at: "p. 127: up to 50 °F above the liquid is normal" },
});

/**
 * How a packed box is closed, started and run in, and looked at again until it
 * has settled. Turning shafts run wet first and are closed in by small steps,
 * never in order to reach zero; stems are set by torque and strokes.
 *
 *   T_h = T_max − ΔT (hold), T_rod = T_liquid + ΔT (rods)
 *
 * Units: temperatures K, torque N·m, times s, moves in flats (sixths of a turn of every nut), drip per minute.
 * Range: drip above 0 to 5000 per minute, refused for a stem; refused where product may not be let out and neither flush nor grease keeps the packing alive.
 * Source: data/run-in, each step, setting and schedule with its own.
 * @example runInPlan({ motion: "turning", release: "allowed", flush: "yes", seating: "firm" }, facts, fitFacts, cautionFacts)
 */
export function runInPlan(given: RunInGiven, facts: RunInFacts, fitFacts: FitFacts, cautionFacts: CautionFacts): Answer<RunInPlan> {
  const refused = refuseCase(given) ?? refuseRunIn(given);
  if (refused) return refused;
  const work = begin();
  const open = openCase(given, cautionFacts, work);
  const { motion } = given;
  const stem = isStem(motion);
  const film = filmOf(open.sides);
  const noFilm = refuseNoFilm(given, film);
  if (noFilm) return noFilm;
  const { sides } = open;
  const same = sameFor(facts)(fitFacts)(open);
  const settings = new Settings(work, same.settings);
  const seating = sides.seating as Seating;
  if (seating === "unknown" && !stem && sides.ringForm === "braid")
    work.warn({ kind: "gap", input: "seating", says: { id: "run-in-seating-unknown" } });
  if (sides.release === "unknown" && !stem) work.warn({ kind: "gap", input: "release", says: { id: "run-in-release-unknown" } });
  if (sides.release === "not-allowed" && motion === "stroking" && film === "product")
    work.warn({ kind: "limit", input: "release", says: { id: "run-in-rod-collect" } });
  const steps: Step[] = [];
  expand(steps, same.lines, {
    settings,
    rings: 0,
    throatSide: 0,
    clock: () => undefined,
    expected: expectations(
      given,
      (rise) => work.step(rodRule, [given.temperature ?? Number.NaN, rise], ((given.temperature ?? Number.NaN) + rise) as Temperature),
      settings,
    ),
  });
  const below = settings.take("hold-below-limit")?.use as TemperatureDifference | undefined;
  const { temperatureLimit, dripLow, dripHigh } = given;
  const holdAt =
    temperatureLimit === undefined || below === undefined || stem
      ? undefined
      : work.step(holdRule, [temperatureLimit, below], (temperatureLimit - below) as Temperature);
  for (const setting of same.shownByStopRules) settings.use(setting);
  const found: { -readonly [N in keyof RunInPlan]: RunInPlan[N] } = {
    film: stem ? "none" : film,
    seating,
    steps,
    stopRules: same.stopRules,
    spread: spreadOf(motion, facts.schedules),
  };
  if (dripLow !== undefined && dripHigh !== undefined) found.aim = { low: dripLow, high: dripHigh };
  if (holdAt !== undefined) found.holdAt = holdAt;
  return work.found<RunInPlan>(found);
}

function expectations(
  given: RunInGiven,
  rodLimit: (rise: number) => Temperature,
  settings: Settings,
): (what: string) => Expected | undefined {
  return (what) => {
    if (what === "torque" && given.torque !== undefined) return { predicted: { kind: "torque", value: given.torque } };
    if (what === "box-limit" && given.temperatureLimit !== undefined)
      return { most: { kind: "temperature", value: given.temperatureLimit } };
    if (what === "rod-limit" && given.temperature !== undefined) {
      const rise = settings.take("rod-rise")?.use;
      return rise === undefined ? undefined : { most: { kind: "temperature", value: rodLimit(rise) } };
    }
    return undefined;
  };
}
