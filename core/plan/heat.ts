import { turns } from "../box/index.ts";
import { type FrictionPower, flushFlow, frictionPower, type GrowingPacking, type ThermalGrowth, thermalGrowth } from "../heat/index.ts";
import { type DripGuidance, type DripService, dripGuideline } from "../leak/index.ts";
import type { StyleFacts } from "../materials/index.ts";
import type { RingSet } from "../rings/index.ts";
import { type GaugePressure, quantity, type VolumeFlow } from "../units/index.ts";
import { begin, rule } from "../workings/index.ts";
import { ringsHeight, type Settings } from "./load.ts";
import type { MeasuredBox } from "./measure.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Survey } from "./survey.ts";

/** What friction makes of heat, what takes it away, and how much the box may drip. */
export interface Heat {
  readonly power: Part<FrictionPower> | undefined;
  readonly flush: Part<{ readonly flow: VolumeFlow }> | undefined;
  readonly growth: Part<ThermalGrowth> | undefined;
  readonly drip: Part<DripGuidance> | undefined;
}

const room = quantity("temperature", 20, "degC");

const riseTaken = rule({
  id: "flush-rise-taken",
  name: "rise",
  symbol: "ΔT",
  expression: "chosen",
  unit: "K",
  inputs: [],
  citation: { source: "own-proposal", at: "a rise that leaves the flush lukewarm" },
  assumed: { min: 5, max: 30 },
});
const flushTemperatureTaken = rule({
  id: "flush-temperature-taken",
  name: "temperature",
  symbol: "T",
  expression: "taken for lack of a measurement",
  unit: "K",
  inputs: [],
  citation: { source: "own-proposal", at: "clean water from the main" },
  assumed: { min: quantity("temperature", 5, "degC"), max: quantity("temperature", 30, "degC") },
});

/** Works out heat and drip; a stem makes neither. */
export function heatOf(
  survey: Survey,
  box: MeasuredBox,
  set: RingSet | undefined,
  style: StyleFacts | undefined,
  settings: Settings | undefined,
  pressure: GaugePressure | undefined,
  facts: PlanFacts,
): Heat {
  const { motion, service = {}, flush = {} } = survey;
  const turning = turns(motion);
  const shaft = answerOf(box.shaft)?.mean.mean;
  const bore = answerOf(box.bore)?.mean.mean;
  const power = turning
    ? when({ shaft, bore, set, "service.rotation": service.rotation, "set.glandStress": settings }, (known) =>
        frictionPower({
          shaft: known.shaft,
          bore: known.bore,
          packedLength: ringsHeight(known.set),
          glandStress: known["set.glandStress"].glandStress,
          ratio: known["set.glandStress"].ratio,
          frictionBore: known["set.glandStress"].friction,
          rotation: known["service.rotation"],
        }),
      )
    : undefined;
  return {
    power,
    flush: turning && flush.fitted === true ? flushOf(answerOf(power)) : undefined,
    growth: growthOf(survey, set, style, facts),
    drip: turning || motion === "stroking" ? dripOf(survey, shaft, style, pressure, facts) : undefined,
  };
}

function flushOf(power: FrictionPower | undefined): Part<{ readonly flow: VolumeFlow }> {
  return when({ "service.rotation": power }, (known) => {
    const work = begin();
    const rise = work.assume(riseTaken, quantity("temperature-difference", 20, "K"));
    const temperature = work.assume(flushTemperatureTaken, room);
    const flow = flushFlow({ power: known["service.rotation"].band.high, rise, temperature });
    return flow.ok ? work.found(work.take(flow)) : flow;
  });
}

/** Packings whose growth when warm is known. */
const growing: Readonly<Record<string, GrowingPacking>> = { ptfe: "ptfe", graphite: "flexible-graphite" };

function growthOf(
  { service = {} }: Survey,
  set: RingSet | undefined,
  style: StyleFacts | undefined,
  facts: PlanFacts,
): Part<ThermalGrowth> | undefined {
  const packing = style && growing[style.family];
  if (packing === undefined || service.temperature === undefined || service.temperature <= room) return undefined;
  return when({ set, "service.temperature": service.temperature }, (known) =>
    thermalGrowth({ packing, packedLength: ringsHeight(known.set), from: room, to: known["service.temperature"] }, facts.heat),
  );
}

function dripOf(
  survey: Survey,
  shaft: MeasuredBox["stock"],
  style: StyleFacts | undefined,
  pressure: GaugePressure | undefined,
  facts: PlanFacts,
): Part<DripGuidance> {
  const { motion, release } = survey;
  return when({ shaft }, (known) => {
    const given: GivenTo<typeof dripGuideline> = { motion, shaft: known.shaft, service: dripServiceOf(survey) };
    if (style !== undefined) given.material = style.family === "graphite" ? "flexible-graphite" : "other";
    if (release !== undefined) given.release = release;
    if (survey.flush?.fitted) given.film = "flush";
    if (pressure !== undefined) given.boxPressure = pressure;
    return dripGuideline(given, facts.leak.drip);
  });
}

function dripServiceOf({ motion, service = {}, hazards = {} }: Survey): DripService {
  if (hazards.service === "fire-pump") return "fire-pump";
  if (motion === "stroking") return "plunger";
  return service.solids === "coarse" || service.solids === "fine" ? "slurry" : "general";
}
