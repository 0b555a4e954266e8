import { water } from "../fluid/index.ts";
import { type Length, quantity, type Volume } from "../units/index.ts";
import { type Answer, begin, outside, rule, type Workings } from "../workings/index.ts";
import type { DropVolumeFound, DropVolumeQuestion } from "./drop-question.ts";
import { temperatureOr20 } from "./film-water.ts";

const detachRule = rule({
  id: "drop-share-detached",
  symbol: "f",
  expression: "0.65",
  unit: "1",
  inputs: [],
  citation: { source: "eschbaum-1895", at: "water from edges 1.4 to 8.3 mm wide: 0.64 to 0.80, the more the narrower" },
  assumed: { min: 0.6, max: 0.82 },
});

const tipRules = ["drop-volume-tip", "drop-volume-tip-low", "drop-volume-tip-high"].map((id) =>
  rule({
    id,
    name: id.replace("-tip", ""),
    symbol: "V",
    expression: "f π d σ / (ρ g)",
    unit: "m3",
    inputs: [
      { symbol: "f", name: "drop-share-detached", unit: "1" },
      { symbol: "d", name: "drip-tip", unit: "m", valid: { min: quantity("length", 1, "mm"), max: quantity("length", 8.5, "mm") } },
      { symbol: "σ", name: "surface-tension", unit: "N/m" },
      { symbol: "ρ", name: "density", unit: "kg/m3" },
    ],
    citation: { source: "tate-1864", at: "weight of a drop, standard gravity" },
  }),
);

/** Standard gravity: the force on a kilogram. */
const gravity = quantity("force", 1, "kgf");
const atmosphere = quantity("absolute-pressure", 101325, "Pa");
const detached = { middle: 0.65, low: 0.6, high: 0.82 };

/** Surface tension and density as given, or those of water. */
function liquid(work: Workings, given: DropVolumeQuestion): readonly [tension: number, density: number] {
  if (given.surfaceTension !== undefined && given.density !== undefined) return [given.surfaceTension, given.density];
  const found = water({ temperature: temperatureOr20(work, given.temperature), pressure: atmosphere });
  if (!found.ok) return [Number.NaN, Number.NaN];
  const { surfaceTension = Number.NaN, density } = work.take(found);
  return [given.surfaceTension ?? surfaceTension, given.density ?? density];
}

/** Volume of a drop from the edge that it hangs from. */
export function fromTip(tip: Length, given: DropVolumeQuestion): Answer<DropVolumeFound> {
  const refused = outside([
    ["tip", tip, { min: quantity("length", 0.1, "mm"), max: quantity("length", 20, "mm") }, "m"],
    ["surfaceTension", given.surfaceTension ?? 0.07, { min: 0.001, max: 1 }, "N/m"],
    ["density", given.density ?? 1000, { min: 100, max: 20000 }, "kg/m3"],
    [
      "temperature",
      given.temperature ?? quantity("temperature", 20, "degC"),
      { min: quantity("temperature", 0, "degC"), max: quantity("temperature", 99, "degC") },
      "K",
    ],
  ]);
  if (refused) return refused;
  const work = begin();
  const [tension, density] = liquid(work, given);
  work.assume(detachRule, detached.middle);
  const [middle, low, high] = [detached.middle, detached.low, detached.high].map((share, index) =>
    work.step(
      tipRules[index] ?? detachRule,
      [share, tip, tension, density],
      ((share * Math.PI * tip * tension) / (density * gravity)) as Volume,
    ),
  ) as [Volume, Volume, Volume];
  work.warn({ kind: "note", input: "tip", says: { id: "drop-volume-estimated" } });
  return work.found({
    // Anywhere between the two ends alike: standard uncertainty is the width over the root of twelve.
    dropVolume: { mean: middle, u: ((high - low) / Math.sqrt(12)) as Volume },
    band: { low, high },
    basis: "drip-point",
  });
}
