import { quantity, type Temperature } from "../units/index.ts";
import { keptFor, rule, type Workings } from "../workings/index.ts";
import type { Case, CaseFacts, FluidHazards, Phase, YesNo } from "./case.ts";
import type { Sides } from "./condition.ts";

const degC = (value: number): Temperature => quantity("temperature", value, "degC");

/** Bare metal held for a minute burns from here; shorter contact allows more, longer less. */
const burnRule = rule({
  id: "burn-threshold",
  symbol: "T_b",
  expression: "51 °C, one minute's touch, any material",
  unit: "K",
  inputs: [],
  citation: { source: "iso-13732-1", at: "burn thresholds for contact of one minute", seen: "memory" },
  assumed: { min: degC(48), max: degC(70) },
});
const burnFrom = degC(51);

/** Families by style and by their own id, and fluids by id. */
const lookUp = keptFor(({ families, fluids }: CaseFacts) => ({
  byStyle: new Map(families.flatMap((family) => family.styles.map((style) => [style, family]))),
  byId: new Map(families.map((family) => [family.id, family])),
  fluids: new Map(fluids.map((fluid) => [fluid.id, fluid])),
}));

/** The sides of a case that conditions look at. Every side has a value; what nobody said is `unknown`. */
export function sidesOf(given: Case, facts: CaseFacts, work: Workings): Sides {
  const known = lookUp(facts);
  const fluids = fluidsOf(given, known.fluids, work);
  const unsaid: YesNo = fluids.length > 0 && fluids.length === given.fluids?.length ? "no" : "unknown";
  const byStyle = given.style === undefined ? undefined : known.byStyle.get(given.style);
  const family = byStyle ?? (given.family === undefined ? undefined : known.byId.get(given.family));
  if (family === undefined && given.style !== undefined) gap(work, "style", given.style);
  else if (family === undefined && given.family !== undefined) gap(work, "family", given.family);
  return {
    motion: given.motion,
    release: given.release ?? "unknown",
    zone: given.zone ?? "unknown",
    phase: given.phase ?? phaseOf(fluids),
    hot: given.hot ?? hotAt(given.temperature, does(fluids, "hot", unsaid), work),
    cold: does(fluids, "cold", unsaid),
    toxic: given.toxic ?? does(fluids, "toxic", unsaid),
    flammable: given.flammable ?? does(fluids, "flammable", unsaid),
    corrosive: given.corrosive ?? does(fluids, "corrosive", unsaid),
    oxidising: does(fluids, "oxidising", unsaid),
    setting: does(fluids, "setting", unsaid),
    flush: given.flush ?? "unknown",
    quench: given.quench ?? "unknown",
    grease: given.grease ?? "unknown",
    heating: given.heating ?? "unknown",
    vertical: given.vertical ?? "unknown",
    graphite: family?.graphite ?? "unknown",
    fluoropolymer: family?.fluoropolymer ?? "unknown",
    grows: family?.grows ?? "unknown",
    mayRunDry: family?.mayRunDry ?? "unknown",
    seating: given.seating ?? family?.seating ?? "unknown",
    ringForm: given.ringForm ?? "braid",
    pits: given.sleeve === undefined ? "unknown" : facts.pittingSleeves.includes(given.sleeve) ? "yes" : "no",
    oldPacking: given.oldPacking ?? "unknown",
    use: does(fluids, "oxygen", unsaid) === "yes" ? "oxygen" : (given.use ?? "none"),
    service: given.service ?? "normal",
  };
}

function fluidsOf(given: Case, known: ReadonlyMap<string, FluidHazards>, work: Workings): readonly FluidHazards[] {
  const found: FluidHazards[] = [];
  for (const id of given.fluids ?? []) {
    const fluid = known.get(id);
    if (fluid) found.push(fluid);
    else gap(work, "fluids", id);
  }
  return found;
}

/** Whether any of the fluids does this; `unsaid` where none of them is known to. */
function does(fluids: readonly FluidHazards[], hazard: FluidHazards["does"][number], unsaid: YesNo): YesNo {
  for (const fluid of fluids) if (fluid.does.includes(hazard)) return "yes";
  return unsaid;
}

/** The one phase of all the fluids. */
function phaseOf(fluids: readonly FluidHazards[]): Phase {
  const phase = fluids[0]?.phase ?? "unknown";
  for (const fluid of fluids) if (fluid.phase !== phase) return "unknown";
  return phase;
}

function hotAt(temperature: Temperature | undefined, byFluid: YesNo, work: Workings): YesNo {
  if (temperature === undefined) return byFluid;
  return temperature >= work.assume(burnRule, burnFrom) ? "yes" : "no";
}

function gap(work: Workings, input: string, given: string): void {
  work.warn({ kind: "gap", input, given, says: { id: "caution-not-in-list", with: { input, given } } });
}
