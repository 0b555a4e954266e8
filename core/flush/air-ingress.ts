import { type GaugePressure, quantity } from "../units/index.ts";
import { type Answer, type Band, begin, type Filling, outside, refuse, rule } from "../workings/index.ts";

export const airStates = ["in", "may", "out"] as const;
/** Whether air is drawn in through the packing: yes, perhaps, no. */
type AirState = (typeof airStates)[number];
export const airAdvices = ["independent-supply", "bypass-from-discharge", "none"] as const;
type AirAdvice = (typeof airAdvices)[number];

export interface AirIngress {
  readonly running: AirState;
  /** At standstill the box falls to suction pressure; left out where that is not known. */
  readonly standing?: AirState;
  readonly advice: AirAdvice;
  /** Gauge pressure of an independent supply at the lantern ring. */
  readonly supply?: Band<GaugePressure>;
}

const handbook = { source: "pump-handbook-2001", at: "p. 2.192" } as const;

const nearTaken = rule({
  id: "near-atmosphere",
  symbol: "p_near",
  expression: "counted as about atmospheric below this",
  unit: "Pa",
  inputs: [],
  citation: { source: "own-proposal", at: "box pressures are not known better than this" },
  assumed: { min: 0, max: quantity("pressure", 0.35, "bar") },
});
const nearAtmosphere = quantity("pressure", 0.2, "bar");

const liftRule = rule({
  id: "lift-limit",
  symbol: "p_lift",
  expression: "−ρ · g · h",
  unit: "Pa",
  inputs: [
    { symbol: "ρ", name: "density", unit: "kg/m3" },
    { symbol: "g", name: "gravity", unit: "m/s2" },
    { symbol: "h", name: "suction-lift", unit: "m" },
  ],
  citation: { ...handbook, at: "p. 2.192, suction lift above 15 ft of water" },
});
const coldWater = 1000;
const gravity = 9.80665;
const longLift = quantity("length", 15, "ft");

const supplyRule = rule({
  id: "vacuum-supply",
  symbol: "p_f",
  expression: "10 to 25 psi above the atmosphere",
  unit: "Pa",
  inputs: [],
  citation: { ...handbook, at: "p. 2.192, in psi; the bar figures printed beside them there are a misprint" },
  assumed: { min: quantity("pressure", 10, "psi"), max: quantity("pressure", 25, "psi") },
});

const range = { min: quantity("pressure", -1.1, "bar"), max: quantity("pressure", 1000, "bar") };

/**
 * Whether air is drawn in through the packing, running and standing, and what
 * keeps it out: clean water to the lantern ring, from the pump's own discharge
 * where the box is about atmospheric, from an independent supply 10 to 25 psi
 * above the atmosphere where suction is a lift of more than 15 ft or a vacuum.
 *
 *   in: p_b ≤ 0;  perhaps: lowest p_b ≤ 0.2 bar;  long lift: p < −ρ g · 15 ft
 *
 * Units: gauge pressures Pa.
 * Range: −1.1 to 1000 bar, refused outside; a lowest box pressure above the usual one is refused as impossible.
 * Source: Pump Handbook, 3rd ed., p. 2.192; what counts as about atmospheric is our own proposal.
 * @example airIngress({ boxPressureGauge: quantity("pressure", -0.3, "bar") }).value.running // "in"
 */
export function airIngress(given: {
  readonly boxPressureGauge: GaugePressure;
  readonly boxLowestGauge?: GaugePressure;
  readonly suctionGauge?: GaugePressure;
}): Answer<AirIngress> {
  const { boxPressureGauge, boxLowestGauge = boxPressureGauge, suctionGauge } = given;
  const refused = outside([
    ["boxPressureGauge", boxPressureGauge, range, "Pa"],
    ["boxLowestGauge", boxLowestGauge, range, "Pa"],
    ["suctionGauge", suctionGauge ?? 0, range, "Pa"],
  ]);
  if (refused) return refused;
  if (boxLowestGauge > boxPressureGauge) {
    return refuse({
      kind: "impossible",
      input: "boxLowestGauge",
      given: boxLowestGauge,
      allowed: { max: boxPressureGauge, unit: "Pa" },
      says: { id: "box-lowest-above-usual", with: { usual: { value: boxPressureGauge, kind: "pressure" } } },
    });
  }
  const work = begin();
  const near = work.assume(nearTaken, nearAtmosphere);
  const lift = work.step(liftRule, [coldWater, gravity, longLift], -coldWater * gravity * longLift);
  const stateOf = (usual: number, lowest: number): AirState => (usual <= 0 ? "in" : lowest <= near ? "may" : "out");
  const running = stateOf(boxPressureGauge, boxLowestGauge);
  const standing = suctionGauge === undefined ? undefined : stateOf(suctionGauge, suctionGauge);
  const found: Filling<AirIngress> = standing === undefined ? { running, advice: "none" } : { running, standing, advice: "none" };

  if (standing === undefined) work.warn({ kind: "gap", input: "suctionGauge", says: { id: "air-standing-not-known" } });
  if (running === "out" && (standing === undefined || standing === "out")) return work.found<AirIngress>(found);

  if (running !== "out") work.warn({ kind: "limit", input: "boxPressureGauge", says: { id: "air-comes-in-running" }, citation: handbook });
  else work.warn({ kind: "limit", input: "suctionGauge", says: { id: "air-comes-in-standing" }, citation: handbook });
  const longSuction = Math.min(boxPressureGauge, suctionGauge ?? boxPressureGauge) < lift;
  if (!longSuction) {
    if (standing === "in" || standing === "may")
      work.warn({ kind: "note", input: "suctionGauge", says: { id: "bypass-stops-with-the-pump" } });
    found.advice = "bypass-from-discharge";
    return work.found<AirIngress>(found);
  }
  const { min = 0, max = 0 } = supplyRule.assumed ?? {};
  const supply = { low: work.assume(supplyRule, min as GaugePressure), high: work.assume(supplyRule, max as GaugePressure) };
  found.advice = "independent-supply";
  found.supply = supply;
  return work.found<AirIngress>(found);
}
