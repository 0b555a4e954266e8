import type { VolumeFlow } from "../units/index.ts";
import { type Answer, type Band, begin, type Filling, keptByName, keptFor, notWithin, type Range, refuse } from "../workings/index.ts";
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

type Choice = Required<Pick<DripQuestion, "motion" | "service" | "stage" | "material">>;

/** Figures for this very service where there are any, else the general ones; of the stage and material asked for. */
const chosenFrom = keptFor((facts: DripFacts) =>
  keptByName(({ motion, service, stage, material }: Choice): readonly DripGuideline[] => {
    const fitting = facts.guidelines.filter(
      (entry) => entry.motions.includes(motion) && entry.stage === stage && (entry.material === undefined || entry.material === material),
    );
    const own = fitting.filter((entry) => entry.services.includes(service));
    return own.length > 0 ? own : fitting.filter((entry) => entry.services.includes("general"));
  }),
);

function choose(facts: DripFacts, question: DripQuestion): readonly DripGuideline[] {
  const { motion, service = "general", stage = "settled", material = "other" } = question;
  return chosenFrom(facts)(`${motion} ${service} ${stage} ${material}`, { motion, service, stage, material });
}

const shafts: Range = { min: 0.0005, max: 5 };
const rates: Range = { min: 0, max: 10000 };

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
    notWithin("shaft", shaft, shafts, "m") ??
    notWithin("dropVolume", dropVolume ?? assumedDropVolume, dropVolumeRange, "m3") ??
    notWithin("rate", rate ?? 0, rates, "1/min") ??
    (house &&
      (notWithin("house.low", house.low, rates, "1/min") ??
        notWithin("house.high", house.high, { min: house.low, max: 10000 }, "1/min"))) ??
    neverADrip(given);
  if (refused) return refused;
  const chosen = choose(facts, given);
  if (chosen.length === 0 && house === undefined) {
    return refuse({ kind: "not-known", input: "motion", given: motion, says: { id: "drip-none-published" } });
  }
  const work = begin();
  const volume = dropVolume ?? work.assume(assumedDropVolumeRule, assumedDropVolume);
  const spread = dropVolume === undefined ? dropVolumeSpread : { low: dropVolume, high: dropVolume };
  const guidelines: DripAdvice[] = [];
  for (const guideline of chosen) guidelines.push(advise(work, guideline, shaft, volume, spread, rate));
  sayWhatCounts(work, given);
  const { zeroAllowed, zeroBecause } = zeroDrip(work, facts, given);
  const found: Filling<DripGuidance> = { guidelines, zeroAllowed };
  spreadOver(guidelines, found);
  if (house) found.house = { drops: house, ...verdictOn(rate, house) };
  if (zeroBecause !== undefined) found.zeroBecause = zeroBecause;
  return work.found<DripGuidance>(found);
}

/** The widest band of all that is published, as drops and as flow. */
function spreadOver(guidelines: readonly DripAdvice[], found: Filling<DripGuidance>): void {
  let spread: { low: number; high: number } | undefined;
  let flow: { low: VolumeFlow; high: VolumeFlow } | undefined;
  for (const advice of guidelines) {
    if (advice.drops) spread = widest(spread, advice.drops);
    if (advice.flow) flow = widest(flow, advice.flow);
  }
  if (!spread || !flow) return;
  found.spread = spread;
  found.flow = flow;
}

function widest<Q extends number>(so: { low: Q; high: Q } | undefined, { low, high }: Band<Q>): { low: Q; high: Q } {
  if (!so) return { low, high };
  if (low < so.low) so.low = low;
  if (high > so.high) so.high = high;
  return so;
}
