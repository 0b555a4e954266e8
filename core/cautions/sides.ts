import { quantity, type Temperature } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { Case, CaseFacts, FamilyFact, FluidHazards, YesNo } from "./case.ts";
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

/** The family a case's packing belongs to: by its style where that is known, else by the family's own id. */
export function familyOf({ family, style }: Case, facts: CaseFacts): FamilyFact | undefined {
  const byStyle = style === undefined ? undefined : facts.families.find((entry) => entry.styles.includes(style));
  return byStyle ?? (family === undefined ? undefined : facts.families.find((entry) => entry.id === family));
}

/** The sides of a case that conditions look at. Every side has a value; what nobody said is `unknown`. */
export function sidesOf(given: Case, facts: CaseFacts, work: Workings): Sides {
  const fluids = fluidsOf(given, facts, work);
  const named = fluids.length > 0;
  const does = (hazard: FluidHazards["does"][number]): YesNo =>
    fluids.some((fluid) => fluid.does.includes(hazard)) ? "yes" : named && fluids.length === given.fluids?.length ? "no" : "unknown";
  const family = familyOf(given, facts);
  if (family === undefined && given.style !== undefined) gap(work, "style", given.style);
  else if (family === undefined && given.family !== undefined) gap(work, "family", given.family);
  const use = given.use ?? "none";
  const phases = new Set(fluids.map((fluid) => fluid.phase));
  return {
    motion: given.motion,
    release: given.release ?? "unknown",
    zone: given.zone ?? "unknown",
    phase: given.phase ?? (phases.size === 1 ? [...phases].join() : "unknown"),
    hot: given.hot ?? hotAt(given.temperature, does("hot"), work),
    cold: does("cold"),
    toxic: given.toxic ?? does("toxic"),
    flammable: given.flammable ?? does("flammable"),
    corrosive: given.corrosive ?? does("corrosive"),
    oxidising: does("oxidising"),
    setting: does("setting"),
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
    use: does("oxygen") === "yes" ? "oxygen" : use,
    service: given.service ?? "normal",
  };
}

function fluidsOf(given: Case, facts: CaseFacts, work: Workings): readonly FluidHazards[] {
  const found: FluidHazards[] = [];
  for (const id of given.fluids ?? []) {
    const fluid = facts.fluids.find((entry) => entry.id === id);
    if (fluid) found.push(fluid);
    else gap(work, "fluids", id);
  }
  return found;
}

function hotAt(temperature: Temperature | undefined, byFluid: YesNo, work: Workings): YesNo {
  if (temperature === undefined) return byFluid;
  return temperature >= work.assume(burnRule, burnFrom) ? "yes" : "no";
}

function gap(work: Workings, input: string, given: string): void {
  work.warn({ kind: "gap", input, given, says: { id: "caution-not-in-list", with: { input, given } } });
}
