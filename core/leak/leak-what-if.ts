import type { Density, Length, PressureDifference, Temperature, Viscosity, VolumeFlow } from "../units/index.ts";
import { type Answer, begin, outside, type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import { annularLeakRule } from "./annular-leak.ts";
import { type Annulus, annulusChecks, annulusRanges, checkValidity, flowPerCube } from "./annulus.ts";
import { clearanceFromLeak } from "./clearance-from-leak.ts";
import { filmViscosity, temperatureOr20 } from "./film-water.ts";
import type { Observed, ShaftState } from "./observed.ts";

/** What acts on the gap at one reading, or would act on it. */
interface Condition {
  readonly pressureDrop?: PressureDifference;
  /** Of any liquid. */
  readonly viscosity?: Viscosity;
  /** Of water, where no viscosity is given. */
  readonly temperature?: Temperature;
  readonly eccentricity?: number;
}

/** One reading of a leak, and what would change. */
export interface LeakWhatIf extends Observed, Condition {
  readonly diameter: Length;
  readonly length: Length;
  readonly flow: VolumeFlow;
  readonly pressureDrop: PressureDifference;
  readonly density?: Density;
  readonly changed: Condition & { readonly state?: ShaftState };
}

export interface LeakThen {
  readonly flow: VolumeFlow;
  /** The leak then over the leak now. */
  readonly ratio: number;
  readonly clearance: Length;
  readonly reynolds: number;
}

const eccentricityRule = rule({
  id: "leak-eccentricity-assumed",
  name: "eccentricity",
  symbol: "e",
  expression: "0, centred",
  unit: "1",
  inputs: [],
  citation: { source: "own-proposal", at: "touching, e = 1, leaks 2.5 times as much" },
  assumed: annulusRanges.eccentricity,
});

const ratioRule = rule({
  id: "leak-ratio",
  symbol: "Q2/Q1",
  expression: "Q2 / Q1",
  unit: "1",
  inputs: [
    { symbol: "Q2", name: "leak-then", unit: "m3/s" },
    { symbol: "Q1", name: "leak", unit: "m3/s" },
  ],
  citation: { source: "definition" },
});

/** A leak below this is none; nothing can be told from it. */
const leastFlow = 1e-15;

function cannotBeAsked({ state, viscosity, changed }: LeakWhatIf): Refused | undefined {
  if (state !== undefined && changed.state !== undefined && changed.state !== state) {
    const says = { id: "leak-states-do-not-mix", with: { observed: state, asked: changed.state } };
    return refuse({ kind: "impossible", input: "changed.state", given: changed.state, allowed: [state], says });
  }
  if (viscosity !== undefined && changed.temperature !== undefined && changed.viscosity === undefined) {
    return refuse({ kind: "not-known", input: "changed.viscosity", says: { id: "leak-viscosity-then-needed" } });
  }
  return undefined;
}

function notLiquid(input: string, given: Temperature): Refused {
  const citation = { source: "iapws-r7-97", at: "region 1" } as const;
  return refuse({ kind: "outside-range", input, given: finiteOrText(given), says: { id: "leak-water-not-liquid" }, citation });
}

const finiteOrText = (value: number) => (Number.isFinite(value) ? value : String(value));

/** The gap as it was read and as it would be, or why that cannot be told. */
function nowAndThen(work: Workings, given: LeakWhatIf): readonly [now: Annulus, later: Annulus] | Refused {
  const { pressureDrop, changed } = given;
  const dropThen = changed.pressureDrop ?? pressureDrop;
  const eccentricity = given.eccentricity ?? work.assume(eccentricityRule, 0);
  let viscosity = given.viscosity;
  let viscosityThen = changed.viscosity ?? viscosity;
  if (viscosity === undefined) {
    const temperature = temperatureOr20(work, given.temperature);
    viscosity = filmViscosity(work, temperature, pressureDrop);
    if (viscosity === undefined) return notLiquid("temperature", temperature);
    const same = changed.temperature === undefined && changed.pressureDrop === undefined;
    viscosityThen ??= same ? viscosity : filmViscosity(work, changed.temperature ?? temperature, dropThen);
    if (viscosityThen === undefined) return notLiquid("changed.temperature", changed.temperature ?? temperature);
  }
  const now: Annulus = { ...given, viscosity, eccentricity };
  return [
    now,
    { ...now, pressureDrop: dropThen, viscosity: viscosityThen ?? viscosity, eccentricity: changed.eccentricity ?? eccentricity },
  ];
}

/**
 * What an observed leak becomes when pressure, temperature or eccentricity
 * change and the clearance stays as it was.
 *
 *   Q2 / Q1 = (Δp2 / Δp1) · (η1 / η2) · (1 + 1.5 e2²) / (1 + 1.5 e1²)
 *
 * Units: Q m3/s, Δp Pa, η Pa·s, T K of water where no viscosity is given.
 * Range: as `clearanceFromLeak`. A running reading says nothing about a standing shaft, nor the other way round:
 * refused. A new temperature of a liquid other than water needs its viscosity there: refused without. Nothing here
 * tells what moving the gland would do: nothing published links its nuts to the leak.
 * Source: `annularLeak` at one clearance.
 * @example leakWhatIf({ diameter: mm(50), length: mm(50), flow: mlPerMin(3), pressureDrop: bar(3), temperature: degC(20), changed: { temperature: degC(80) } }) // 8.5 mL/min
 */
export function leakWhatIf(given: LeakWhatIf): Answer<LeakThen> {
  const { diameter, length, flow, pressureDrop, changed } = given;
  const refused =
    cannotBeAsked(given) ??
    outside([
      ["pressureDrop", pressureDrop, { ...annulusRanges.pressureDrop, min: 1 }, "Pa"],
      ["changed.pressureDrop", changed.pressureDrop ?? pressureDrop, annulusRanges.pressureDrop, "Pa"],
      ["flow", flow, { ...annulusRanges.flow, min: leastFlow }, "m3/s"],
    ]);
  if (refused) return refused;
  const work = begin();
  const both = nowAndThen(work, given);
  if ("ok" in both) return both;
  const [now, later] = both;
  const outsideNowOrThen = outside([
    ...annulusChecks(now),
    ["changed.viscosity", later.viscosity, annulusRanges.viscosity, "Pa*s"],
    ["changed.eccentricity", later.eccentricity, annulusRanges.eccentricity, "1"],
  ]);
  if (outsideNowOrThen) return outsideNowOrThen;
  const observed = clearanceFromLeak({ ...now, ...observation(given), flow });
  if (!observed.ok) return observed;
  const { clearance } = work.take(observed);
  const inputs = [diameter, clearance, later.pressureDrop, later.eccentricity, later.viscosity, length];
  const flowThen = work.step(annularLeakRule, inputs, (flowPerCube(later) * clearance ** 3) as VolumeFlow);
  const ratio = work.step(ratioRule, [flowThen, flow], flowThen / flow);
  const reynolds = checkValidity(work, later, clearance, flowThen);
  work.warn({ kind: "note", says: { id: "leak-clearance-kept" }, citation: { source: "own-proposal" } });
  return work.found({ flow: flowThen, ratio, clearance, reynolds });
}

function observation({ where, state, flushOn }: LeakWhatIf): Observed {
  return {
    ...(where === undefined ? {} : { where }),
    ...(state === undefined ? {} : { state }),
    ...(flushOn === undefined ? {} : { flushOn }),
  };
}
