import { quantity, type Volume, type VolumeFlow } from "../units/index.ts";
import { type Answer, type Band, begin, outside, type Rule, rule, type Workings } from "../workings/index.ts";

export const dropVolumeRange = { min: quantity("volume", 0.001, "mL"), max: quantity("volume", 2, "mL") } as const;
const minute = quantity("time", 1, "min");

/** 20 drops to the millilitre is what pharmacists count; a tap's drops are five times as big. */
export const assumedDropVolumeRule = rule({
  id: "drop-volume-assumed",
  name: "drop-volume",
  symbol: "V",
  expression: "0.05 mL",
  unit: "m3",
  inputs: [],
  citation: { source: "reeves-drops", at: "20 drops to the millilitre; the spread up to 0.25 mL from leaflets on dripping taps" },
  assumed: { min: quantity("volume", 0.03, "mL"), max: quantity("volume", 0.25, "mL") },
});
export const assumedDropVolume = quantity("volume", 0.05, "mL");
export const dropVolumeSpread: Band<Volume> = { low: quantity("volume", 0.03, "mL"), high: quantity("volume", 0.25, "mL") };

function flowRule(id: string): Rule {
  return rule({
    id,
    symbol: "Q",
    expression: "n V / 1 min",
    unit: "m3/s",
    inputs: [
      { symbol: "n", name: "drop-rate", unit: "1/min" },
      { symbol: "V", name: "drop-volume", unit: "m3" },
    ],
    citation: { source: "definition" },
  });
}

function rateRule(id: string): Rule {
  return rule({
    id,
    symbol: "n",
    expression: "Q · 1 min / V",
    unit: "1/min",
    inputs: [
      { symbol: "Q", name: "leak", unit: "m3/s" },
      { symbol: "V", name: "drop-volume", unit: "m3" },
    ],
    citation: { source: "definition" },
  });
}

const flowRules = { middle: flowRule("drops-as-flow"), low: flowRule("drops-as-flow-low"), high: flowRule("drops-as-flow-high") };
const rateRules = { middle: rateRule("flow-as-drops"), low: rateRule("flow-as-drops-low"), high: rateRule("flow-as-drops-high") };

export function dropsAsFlow(rate: number, volume: Volume): VolumeFlow {
  return ((rate * volume) / minute) as VolumeFlow;
}

export function flowAsDrops(flow: VolumeFlow, volume: Volume): number {
  return (flow * minute) / volume;
}

/** Faster than this, drops run together and can no longer be counted. */
const countableTo = 300;

function sayHowWellCounted(work: Workings, rate: number, dropVolume: Volume | undefined): void {
  if (dropVolume === undefined) work.warn({ kind: "gap", input: "dropVolume", says: { id: "drop-volume-not-measured" } });
  if (rate <= countableTo) return;
  const says = { id: "drops-run-together", with: { limit: countableTo } };
  work.warn({ kind: "outside-validity", input: "rate", given: rate, says, citation: { source: "common-practice" } });
}

/**
 * A counted drip as a flow.
 *
 *   Q = n V / min
 *
 * Units: Q m3/s, n drops a minute, V m3.
 * Range: 0 to 10 000 drops a minute, drops of 0.001 to 2 mL; refused outside; above 300 a minute flagged, for drops
 * run together. A drop volume left out is taken as 0.05 mL, and the reply carries the flow for 0.03 and 0.25 mL.
 * Source: definition; W. Reeves (20 drops to the millilitre), water utilities' leaflets on dripping taps (0.25 mL).
 * @example drops({ rate: 60, dropVolume: quantity("volume", 0.05, "mL") }) // 3 mL/min
 */
export function drops(given: {
  readonly rate: number;
  readonly dropVolume?: Volume;
}): Answer<{ readonly flow: VolumeFlow; readonly band?: Band<VolumeFlow> }> {
  const { rate, dropVolume } = given;
  const refused = outside([
    ["rate", rate, { min: 0, max: 10000 }, "1/min"],
    ["dropVolume", dropVolume ?? assumedDropVolume, dropVolumeRange, "m3"],
  ]);
  if (refused) return refused;
  const work = begin();
  const volume = dropVolume ?? work.assume(assumedDropVolumeRule, assumedDropVolume);
  const flow = work.step(flowRules.middle, [rate, volume], dropsAsFlow(rate, volume));
  sayHowWellCounted(work, rate, dropVolume);
  if (dropVolume !== undefined) return work.found({ flow });
  const { low, high } = dropVolumeSpread;
  return work.found({
    flow,
    band: {
      low: work.step(flowRules.low, [rate, low], dropsAsFlow(rate, low)),
      high: work.step(flowRules.high, [rate, high], dropsAsFlow(rate, high)),
    },
  });
}

/**
 * A flow as the drops a minute that it would be counted as.
 *
 *   n = Q min / V
 *
 * Units: n drops a minute, Q m3/s, V m3.
 * Range: flow 0 to 0.001 m3/s, drops of 0.001 to 2 mL; refused outside; flagged and assumed as in `drops`.
 * Source: as `drops`.
 * @example dropsFromFlow({ flow: quantity("flow", 3, "mL/min"), dropVolume: quantity("volume", 0.05, "mL") }) // 60 a minute
 */
export function dropsFromFlow(given: {
  readonly flow: VolumeFlow;
  readonly dropVolume?: Volume;
}): Answer<{ readonly rate: number; readonly band?: Band }> {
  const { flow, dropVolume } = given;
  const refused = outside([
    ["flow", flow, { min: 0, max: 0.001 }, "m3/s"],
    ["dropVolume", dropVolume ?? assumedDropVolume, dropVolumeRange, "m3"],
  ]);
  if (refused) return refused;
  const work = begin();
  const volume = dropVolume ?? work.assume(assumedDropVolumeRule, assumedDropVolume);
  const rate = work.step(rateRules.middle, [flow, volume], flowAsDrops(flow, volume));
  sayHowWellCounted(work, rate, dropVolume);
  if (dropVolume !== undefined) return work.found({ rate });
  const { low, high } = dropVolumeSpread;
  return work.found({
    rate,
    band: {
      low: work.step(rateRules.low, [flow, high], flowAsDrops(flow, high)),
      high: work.step(rateRules.high, [flow, low], flowAsDrops(flow, low)),
    },
  });
}
