import type { Length, VolumeFlow } from "../units/index.ts";
import { type Answer, type Band, begin, outside, type Rule, rule } from "../workings/index.ts";
import { type Annulus, annulusChecks, annulusRanges, checkValidity, flowPerCube } from "./annulus.ts";
import { type Observed, type ShaftState, sayWhatItHoldsFor, wrongPlace } from "./observed.ts";

function clearanceRule(id: string, name: string, drop: string, length: string): Rule {
  return rule({
    id,
    name,
    symbol: "c",
    expression: "(12 η L Q / (π d Δp (1 + 1.5 e²)))^⅓",
    unit: "m",
    inputs: [
      { symbol: "Q", name: "leak", unit: "m3/s" },
      { symbol: "d", name: "diameter", unit: "m" },
      { symbol: "Δp", name: drop, unit: "Pa" },
      { symbol: "e", name: "eccentricity", unit: "1", valid: annulusRanges.eccentricity },
      { symbol: "η", name: "viscosity", unit: "Pa*s" },
      { symbol: "L", name: length, unit: "m" },
    ],
    citation: { source: "tao-donovan-1955", at: "thin annulus, solved for its clearance", seen: "memory" },
  });
}

/** The same equation; what differs is which length and which drop of pressure are meant. */
function clearanceRules(name: string) {
  return {
    notSaid: clearanceRule(name, name, "pressure-drop", "length"),
    flushOn: clearanceRule(`${name}-flush-on`, name, "drop-flush-to-atmosphere", "length-gland-side-rings"),
    flushOff: clearanceRule(`${name}-flush-off`, name, "drop-box-to-atmosphere", "length-all-rings"),
  } as const;
}

const middleRules = clearanceRules("equivalent-clearance");
const lowRules = clearanceRules("equivalent-clearance-low");
const highRules = clearanceRules("equivalent-clearance-high");

/** The clearance that an observed leak amounts to, and the readings it may be used for. */
export interface ClearanceFound {
  readonly clearance: Length;
  /** From the band of the flow, when one was given. */
  readonly band?: Band<Length>;
  readonly reynolds: number;
  /** Whose readings it belongs to. */
  readonly state?: ShaftState;
}

/**
 * Even clearance at the shaft that would let an observed leak through: the
 * equivalent clearance, kept between readings so that pressure, temperature
 * and eccentricity can be reckoned with.
 *
 *   c = (12 η L Q / (π d Δp (1 + 1.5 e²)))^⅓
 *
 * Units: c, d, L m; Q m3/s; Δp Pa; η Pa·s; e = offset / c.
 * Range: e from 0 to 1, pressure drop from 1 Pa, refused outside; a leak that comes round the outside of the rings,
 * under the sleeve or as a spray is refused. With the flush on, L and Δp are those of the gland-side rings, from flush
 * to atmosphere; running and standing readings each have a clearance of their own. Flagged as `annularLeak`.
 * Source: `annularLeak` solved for c.
 * @example clearanceFromLeak({ diameter: mm(50), flow: mlPerMin(3), length: mm(50), pressureDrop: bar(3), viscosity: 1.0016e-3, eccentricity: 0 }) // 8.607 µm
 */
export function clearanceFromLeak(
  given: Annulus & Observed & { readonly flow: VolumeFlow; readonly flowBand?: Band<VolumeFlow> },
): Answer<ClearanceFound> {
  const { diameter, length, pressureDrop, viscosity, eccentricity, flow, flowBand, state, flushOn } = given;
  const refused =
    wrongPlace(given) ??
    outside([
      ...annulusChecks(given),
      ["pressureDrop", pressureDrop, { ...annulusRanges.pressureDrop, min: 1 }, "Pa"],
      ["flow", flow, annulusRanges.flow, "m3/s"],
      ["flowBand.low", flowBand?.low ?? flow, { min: 0, max: flow }, "m3/s"],
      ["flowBand.high", flowBand?.high ?? flow, { min: flow, max: annulusRanges.flow.max }, "m3/s"],
    ]);
  if (refused) return refused;
  const work = begin();
  const perCube = flowPerCube(given);
  const which = flushOn === undefined ? "notSaid" : flushOn ? "flushOn" : "flushOff";
  const at = (rules: typeof middleRules, leak: VolumeFlow) =>
    work.step(rules[which], [leak, diameter, pressureDrop, eccentricity, viscosity, length], Math.cbrt(leak / perCube) as Length);
  const clearance = at(middleRules, flow);
  const reynolds = checkValidity(work, given, clearance, flow);
  sayWhatItHoldsFor(work, given);
  return work.found<ClearanceFound>({
    clearance,
    reynolds,
    ...(flowBand ? { band: { low: at(lowRules, flowBand.low), high: at(highRules, flowBand.high) } } : {}),
    ...(state ? { state } : {}),
  });
}
