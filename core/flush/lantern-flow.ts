import type { Density, GaugePressure, Length, Viscosity, VolumeFlow } from "../units/index.ts";
import { type Answer, begin, outside, rule } from "../workings/index.ts";

const flushPressure = { symbol: "p_f", name: "flushGauge", unit: "Pa" };
const box = { symbol: "p_b", name: "boxPressureGauge", unit: "Pa" };
const viscosity = { symbol: "η", name: "viscosity", unit: "Pa*s" };
const shaft = { symbol: "d", name: "shaft", unit: "m" };

function resistance(id: string, symbol: string, side: "throat" | "gland") {
  return rule({
    id,
    symbol,
    expression: `12 · η · L / (π · d · c³), ${side} side`,
    unit: "Pa*s/m3",
    inputs: [viscosity, { symbol: "L", name: `${side}Length`, unit: "m" }, shaft, { symbol: "c", name: `${side}Clearance`, unit: "m" }],
    citation: { source: "white-viscous-fluid-flow", at: "narrow concentric gap, laminar", seen: "memory" },
  });
}
const throatResistance = resistance("throat-resistance", "R_in", "throat");
const glandResistance = resistance("gland-resistance", "R_out", "gland");

const throatFlowRule = rule({
  id: "throat-side-flow",
  symbol: "Q_in",
  expression: "(p_f − p_b) / R_in",
  unit: "m3/s",
  inputs: [flushPressure, box, { symbol: "R_in", name: "throat-resistance", unit: "Pa*s/m3" }],
  citation: { source: "mechanics", at: "two gaps side by side from the lantern ring" },
});
const glandFlowRule = rule({
  id: "gland-side-flow",
  symbol: "Q_out",
  expression: "p_f / R_out",
  unit: "m3/s",
  inputs: [flushPressure, { symbol: "R_out", name: "gland-resistance", unit: "Pa*s/m3" }],
  citation: { source: "mechanics", at: "two gaps side by side from the lantern ring" },
});
const supplyFlowRule = rule({
  id: "flush-supply-flow",
  symbol: "Q",
  expression: "Q_in + Q_out",
  unit: "m3/s",
  inputs: [
    { symbol: "Q_in", name: "throat-side-flow", unit: "m3/s" },
    { symbol: "Q_out", name: "gland-side-flow", unit: "m3/s" },
  ],
  citation: { source: "definition" },
});
const shutInRule = rule({
  id: "lantern-pressure-shut-in",
  symbol: "p_l",
  expression: "p_b · R_out / (R_in + R_out)",
  unit: "Pa",
  inputs: [
    box,
    { symbol: "R_in", name: "throat-resistance", unit: "Pa*s/m3" },
    { symbol: "R_out", name: "gland-resistance", unit: "Pa*s/m3" },
  ],
  citation: { source: "mechanics", at: "with the flush shut the same flow passes both gaps" },
});
const densityTaken = rule({
  id: "flush-density-taken",
  name: "density",
  symbol: "ρ",
  expression: "water, taken for lack of word of the liquid",
  unit: "kg/m3",
  inputs: [],
  citation: { source: "memory", at: "only for the Reynolds number" },
  assumed: { min: 600, max: 1500 },
});
const reynoldsRule = rule({
  id: "lantern-reynolds",
  symbol: "Re",
  expression: "2 · ρ · |Q| / (π · d · η), the greater of the two sides",
  unit: "1",
  inputs: [{ symbol: "ρ", name: "density", unit: "kg/m3" }, { symbol: "Q", name: "greater-side-flow", unit: "m3/s" }, shaft, viscosity],
  citation: { source: "definition", at: "on twice the gap" },
});
const laminarTo = 2000;

export interface LanternFlow {
  /** From the lantern ring into the pump; negative when product comes out past the lantern ring. */
  readonly throatFlow: VolumeFlow;
  /** From the lantern ring to the open; negative when air is drawn in. */
  readonly glandFlow: VolumeFlow;
  /** What the flush line delivers; negative when product pushes back into it. */
  readonly supplyFlow: VolumeFlow;
  readonly passes: "flush-into-pump" | "nothing" | "product-out";
  /** What a gauge at the tee reads with the flush shut. */
  readonly shutInGauge: GaugePressure;
  readonly reynolds: number;
}

/**
 * How the flush splits at the lantern ring between the rings on its throat
 * side, into the pump, and those on its gland side, to the open. The sign says
 * whether product comes out past the lantern ring.
 *
 *   Q_in = (p_f − p_b) / R_in;  Q_out = p_f / R_out;  R = 12 η L / (π d c³)
 *
 * Units: Q m3/s, gauge pressures Pa, η Pa·s, d, L, c m.
 * Range: shaft 1 mm to 5 m, clearances 0.1 µm to 50 mm, lengths 0.5 mm to 5 m, viscosity 1 µPa·s to
 * 1 kPa·s, −1.1 to 1000 bar; refused outside. Flagged above Re 2000, where the flow is no longer laminar.
 * Source: narrow-gap laminar flow (White, from memory); the split is a balance derived here.
 * @example lanternFlow({ shaft, flushGauge, boxPressureGauge, viscosity, throatClearance, throatLength, glandClearance, glandLength })
 */
export function lanternFlow(given: {
  readonly shaft: Length;
  readonly flushGauge: GaugePressure;
  readonly boxPressureGauge: GaugePressure;
  readonly viscosity: Viscosity;
  readonly throatClearance: Length;
  readonly throatLength: Length;
  readonly glandClearance: Length;
  readonly glandLength: Length;
  readonly density?: Density;
}): Answer<LanternFlow> {
  const { shaft: d, flushGauge, boxPressureGauge, viscosity: eta, throatClearance, throatLength, glandClearance, glandLength } = given;
  const pressures = { min: -1.1e5, max: 1e8 };
  const clearances = { min: 1e-7, max: 0.05 };
  const lengths = { min: 0.0005, max: 5 };
  const refused = outside([
    ["shaft", d, { min: 0.001, max: 5 }, "m"],
    ["flushGauge", flushGauge, pressures, "Pa"],
    ["boxPressureGauge", boxPressureGauge, pressures, "Pa"],
    ["viscosity", eta, { min: 1e-6, max: 1000 }, "Pa*s"],
    ["throatClearance", throatClearance, clearances, "m"],
    ["throatLength", throatLength, lengths, "m"],
    ["glandClearance", glandClearance, clearances, "m"],
    ["glandLength", glandLength, lengths, "m"],
    ["density", given.density ?? 1000, { min: 1, max: 20000 }, "kg/m3"],
  ]);
  if (refused) return refused;
  const work = begin();
  const resist = (length: Length, c: Length) => (12 * eta * length) / (Math.PI * d * c ** 3);
  const rIn = work.step(throatResistance, [eta, throatLength, d, throatClearance], resist(throatLength, throatClearance));
  const rOut = work.step(glandResistance, [eta, glandLength, d, glandClearance], resist(glandLength, glandClearance));
  const throatFlow = work.step(throatFlowRule, [flushGauge, boxPressureGauge, rIn], ((flushGauge - boxPressureGauge) / rIn) as VolumeFlow);
  const glandFlow = work.step(glandFlowRule, [flushGauge, rOut], (flushGauge / rOut) as VolumeFlow);
  const supplyFlow = work.step(supplyFlowRule, [throatFlow, glandFlow], (throatFlow + glandFlow) as VolumeFlow);
  const shutInGauge = work.step(shutInRule, [boxPressureGauge, rIn, rOut], ((boxPressureGauge * rOut) / (rIn + rOut)) as GaugePressure);
  const density = given.density ?? work.assume(densityTaken, 1000);
  const most = Math.max(Math.abs(throatFlow), Math.abs(glandFlow));
  const reynolds = work.step(reynoldsRule, [density, most, d, eta], (2 * density * most) / (Math.PI * d * eta));

  if (reynolds > laminarTo)
    work.warn({ kind: "outside-validity", input: "reynolds", given: reynolds, says: { id: "lantern-flow-not-laminar" } });
  if (throatFlow < 0) work.warn({ kind: "limit", input: "flushGauge", given: flushGauge, says: { id: "product-passes-lantern" } });
  if (supplyFlow < 0) work.warn({ kind: "caution", input: "flushGauge", given: flushGauge, says: { id: "product-into-flush-line" } });
  if (glandFlow < 0) work.warn({ kind: "limit", input: "flushGauge", given: flushGauge, says: { id: "flush-below-atmosphere" } });
  const passes = throatFlow > 0 ? "flush-into-pump" : throatFlow < 0 ? "product-out" : "nothing";
  return work.found<LanternFlow>({ throatFlow, glandFlow, supplyFlow, passes, shutInGauge, reynolds });
}
