import { quantity, type Volume } from "../units/index.ts";
import { type Answer, type Band, begin, outside, type Rule, rule } from "../workings/index.ts";
import type { DropVolumeFound, DropVolumeQuestion } from "./drop-question.ts";

const catchRule = rule({
  id: "drop-volume-caught",
  name: "drop-volume",
  symbol: "V",
  expression: "Vc / N",
  unit: "m3",
  inputs: [
    { symbol: "Vc", name: "caught", unit: "m3" },
    { symbol: "N", name: "drops-counted", unit: "1" },
    { symbol: "r", name: "resolution", unit: "m3" },
  ],
  citation: {
    source: "jcgm-100-2008",
    at: "u² / V² = (r / √12 / Vc)² + (1 / √3 / N)²: the reading within half a mark, the count within one",
  },
});

/** Twice the standard uncertainty either way: about nineteen times in twenty the drop lies between. */
const [lowRule, highRule] = (["-", "+"] as const).map((sign, end) =>
  rule({
    id: end === 0 ? "drop-volume-caught-low" : "drop-volume-caught-high",
    name: end === 0 ? "drop-volume-low" : "drop-volume-high",
    symbol: "V",
    expression: `V ${sign} 2 u`,
    unit: "m3",
    inputs: [
      { symbol: "V", name: "drop-volume", unit: "m3" },
      { symbol: "u", name: "standard-uncertainty", unit: "m3" },
    ],
    citation: { source: "jcgm-100-2008", at: "coverage factor 2" },
  }),
) as [Rule, Rule];

const resolutionRule = rule({
  id: "catch-resolution-assumed",
  name: "resolution",
  symbol: "r",
  expression: "1 mL",
  unit: "m3",
  inputs: [],
  citation: { source: "own-proposal", at: "marks of a common measuring cup or syringe" },
  assumed: { min: quantity("volume", 0.1, "mL"), max: quantity("volume", 5, "mL") },
});

const assumedResolution = quantity("volume", 1, "mL");
const likely: Band<Volume> = { low: quantity("volume", 0.01, "mL"), high: quantity("volume", 0.5, "mL") };
/** Below this many drops the count alone leaves more than a few per cent open. */
const fewDrops = 20;

/** Volume of a drop from a catch with the drops counted. */
export function fromCatch(drops: number, caught: Volume, given: DropVolumeQuestion): Answer<DropVolumeFound> {
  const refused = outside([
    ["drops", drops, { min: 2, max: 100000 }, "1"],
    ["caught", caught, { min: quantity("volume", 0.01, "mL"), max: quantity("volume", 10, "L") }, "m3"],
    ["resolution", given.resolution ?? assumedResolution, { min: 0, max: caught }, "m3"],
  ]);
  if (refused) return refused;
  const work = begin();
  const resolution = given.resolution ?? work.assume(resolutionRule, assumedResolution);
  const share = Math.hypot(resolution / caught / Math.sqrt(12), 1 / drops / Math.sqrt(3));
  const volume = (caught / drops) as Volume;
  const u = (volume * share) as Volume;
  work.step(catchRule, [caught, drops, resolution], volume, u);
  if (drops < fewDrops)
    work.warn({ kind: "note", input: "drops", given: drops, says: { id: "drop-count-short", with: { least: fewDrops } } });
  if (volume < likely.low || volume > likely.high) {
    const says = { id: "drop-volume-unlikely", with: { volume: { value: volume, kind: "volume" } } };
    work.warn({ kind: "slip", input: "caught", given: caught, says });
  }
  const low = work.step(lowRule, [volume, u], (volume - 2 * u) as Volume);
  const high = work.step(highRule, [volume, u], (volume + 2 * u) as Volume);
  return work.found({ dropVolume: { mean: volume, u }, band: { low, high }, basis: "timed-catch" });
}
