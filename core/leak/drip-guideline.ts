import type { VolumeFlow } from "../units/index.ts";
import { type Answer, type Band, begin, outside, refuse } from "../workings/index.ts";
import { advise, type DripAdvice, type DripVerdict, verdictOn } from "./drip-advice.ts";
import type { DripFacts, DripGuideline } from "./drip-facts.ts";
import { type DripQuestion, type DripZero, neverADrip, sayWhatCounts, zeroDrip } from "./drip-question.ts";
import { assumedDropVolume, assumedDropVolumeRule, dropVolumeRange, dropVolumeSpread } from "./drops.ts";

export interface DripGuidance extends DripZero {
  readonly guidelines: readonly DripAdvice[];
  /** From the lowest to the highest figure, drops a minute; none where only words are published. */
  readonly spread?: Band;
  /** The same as a flow, with the spread of the drop volume in it. */
  readonly flow?: Band<VolumeFlow>;
  readonly house?: { readonly drops: Band; readonly verdict?: DripVerdict };
}

/** Figures for this very service where there are any, else the general ones; of the stage and material asked for. */
function choose(
  facts: DripFacts,
  { motion, service = "general", stage = "settled", material = "other" }: DripQuestion,
): readonly DripGuideline[] {
  const fitting = facts.guidelines.filter(
    (entry) => entry.motions.includes(motion) && entry.stage === stage && (entry.material === undefined || entry.material === material),
  );
  const own = fitting.filter((entry) => entry.services.includes(service));
  return own.length > 0 ? own : fitting.filter((entry) => entry.services.includes("general"));
}

/**
 * What others have published as the drip of a packed box, for this shaft,
 * service and material: a spread by source, never one figure to go for.
 *
 *   n as printed; n d / d1 where it is given for so much of diameter; Q = n V / min
 *
 * Units: n drops a minute for the box, Q m3/s, V m3, d m, box pressure Pa above the atmosphere.
 * Range: shaft above 0 to 5 m, drops of 0.001 to 2 mL, refused outside. A valve stem is refused: it has no drip to set.
 * So is a drip of product where product may not be let out. Where nothing is published and there is no house limit:
 * not known. No drip at all can be in order only with flexible graphite, with grease, or with a box below the
 * atmosphere, and temperature then judges; it is never something to tighten for.
 * Source: each guideline carries its own.
 * @example dripGuideline({ motion: "turning", shaft: quantity("length", 50, "mm") }, facts) // 15.7 to 60 drops a minute
 */
export function dripGuideline(given: DripQuestion, facts: DripFacts): Answer<DripGuidance> {
  const { shaft, dropVolume, rate, house, motion } = given;
  const refused =
    outside([
      ["shaft", shaft, { min: 0.0005, max: 5 }, "m"],
      ["dropVolume", dropVolume ?? assumedDropVolume, dropVolumeRange, "m3"],
      ["rate", rate ?? 0, { min: 0, max: 10000 }, "1/min"],
      ["house.low", house?.low ?? 0, { min: 0, max: 10000 }, "1/min"],
      ["house.high", house?.high ?? house?.low ?? 0, { min: house?.low ?? 0, max: 10000 }, "1/min"],
    ]) ?? neverADrip(given);
  if (refused) return refused;
  const chosen = choose(facts, given);
  if (chosen.length === 0 && house === undefined) {
    return refuse({ kind: "not-known", input: "motion", given: motion, says: { id: "drip-none-published" } });
  }
  const work = begin();
  const volume = dropVolume ?? work.assume(assumedDropVolumeRule, assumedDropVolume);
  const spread = dropVolume === undefined ? dropVolumeSpread : { low: dropVolume, high: dropVolume };
  const guidelines = chosen.map((guideline) => advise(work, guideline, shaft, volume, spread, rate));
  sayWhatCounts(work, given);
  return work.found<DripGuidance>({
    guidelines,
    ...overall(guidelines),
    ...(house ? { house: { drops: house, ...verdictOn(rate, house) } } : {}),
    ...zeroDrip(work, facts, given),
  });
}

function overall(guidelines: readonly DripAdvice[]): Pick<DripGuidance, "spread" | "flow"> {
  const drops = guidelines.flatMap((advice) => advice.drops ?? []);
  const flows = guidelines.flatMap((advice) => advice.flow ?? []);
  if (drops.length === 0) return {};
  return {
    spread: { low: Math.min(...drops.map((band) => band.low)), high: Math.max(...drops.map((band) => band.high)) },
    flow: {
      low: Math.min(...flows.map((band) => band.low)) as VolumeFlow,
      high: Math.max(...flows.map((band) => band.high)) as VolumeFlow,
    },
  };
}
