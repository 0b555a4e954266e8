import { type Answer, begin, refuse } from "../workings/index.ts";
import type { Fact, MaterialsFacts, Style } from "./facts.ts";
import type { Family } from "./families.ts";
import { ready, spelt } from "./ready.ts";

/** Any fact of a style, as one line: whichever of these members it has. */
export interface Line extends Fact {
  readonly value?: number | boolean | null;
  readonly warnAt?: number;
  readonly spread?: readonly [low: number | string, high: number | string];
  readonly min?: number | null;
  readonly max?: number | null;
  readonly class?: number | string | null;
  readonly policy?: string | null;
  readonly food?: string | null;
  readonly potable?: string | null;
  readonly oxygen?: string | null;
  /** Ids of sentences. */
  readonly says?: readonly string[];
  /** Ids that are themselves the word. */
  readonly names?: readonly string[];
  readonly notLimiting?: true;
}

export interface MaterialLine {
  readonly property: string;
  /** SI unit, or the scale; `1` for a plain number. */
  readonly unit: string;
  readonly line: Line;
}

export interface Material {
  readonly id: string;
  readonly family: Family;
  readonly parts: readonly (readonly string[])[];
  readonly notStated: readonly string[];
  readonly lines: readonly MaterialLine[];
}

/** Every property of a style, in the order in which a person would ask for it. */
const properties: readonly (readonly [property: string, unit: string, pick: (style: Style) => Line])[] = [
  ["made", "1", ({ made }) => made],
  ["least-temperature", "K", ({ temperature }) => temperature.min],
  ["most-temperature-in-air", "K", ({ temperature }) => temperature.inAir],
  ["most-temperature-in-water", "K", ({ temperature }) => temperature.inWater],
  ["most-temperature-in-steam", "K", ({ temperature }) => temperature.inSteam],
  ["most-temperature-inert", "K", ({ temperature }) => temperature.inert],
  ["least-ph", "1", ({ pH }) => pH.min],
  ["most-ph", "1", ({ pH }) => pH.max],
  ["attacked-by", "1", ({ pH }) => pH.not],
  ["most-speed", "m/s", ({ speed }) => speed],
  ["most-pressure-turning", "Pa", ({ pressure }) => pressure.turning],
  ["most-pressure-stroking", "Pa", ({ pressure }) => pressure.stroking],
  ["most-pressure-stem", "Pa", ({ pressure }) => pressure.stem],
  ["density", "kg/m3", ({ density }) => density],
  ["abrasives", "1", ({ abrasives }) => abrasives],
  ["least-sleeve-hardness", "HB", ({ sleeve }) => sleeve.min],
  ["preferred-sleeve-hardness", "HRC", ({ sleeve }) => sleeve.preferred],
  ["sleeve-finish", "m", ({ sleeve }) => sleeve.finish],
  ["conductivity", "W/(m*K)", ({ conductivity }) => conductivity],
  ["expansion", "1/K", ({ expansion }) => expansion],
  ["friction", "1", ({ friction }) => friction],
  ["stress-ratio", "1", ({ ratio }) => ratio],
  ["conformity", "1", ({ conformity }) => conformity],
  ["stem-gland-stress", "Pa", ({ glandStress }) => glandStress.stem],
  ["pump-gland-stress", "Pa", ({ glandStress }) => glandStress.pump],
  ["seating-loss", "1", ({ seatingLoss }) => seatingLoss],
  ["break-in", "1", ({ breakIn }) => breakIn],
  ["use", "1", ({ use }) => use],
  ["galvanic", "1", ({ galvanic }) => galvanic],
  ["extrusion", "1", ({ extrusion }) => extrusion],
  ["dark-mark", "1", ({ marks }) => marks],
  ["seating", "1", ({ seating }) => seating],
  ["end-gap", "m", ({ gap }) => gap],
  ["zero-drip", "1", ({ zeroDrip }) => zeroDrip],
  ["services", "1", ({ services }) => services],
  ["not-for", "1", ({ notFor }) => notFor],
];

/**
 * One generic style with everything that is known of it, line by line, each
 * with where it comes from, how it was seen and how far it can be leaned on.
 *
 * Units: K, Pa, m/s, kg/m³, m, 1/K, W/(m·K); hardness on its own scale.
 * Range: ids of data/materials/styles, underscores and capitals forgiven; any other is refused as not known.
 * Source: each line carries its own.
 * @example material({ id: "ramie-flax-ptfe" }, facts)
 */
export function material(question: { readonly id: string }, facts: MaterialsFacts): Answer<Material> {
  const { byId } = ready(facts);
  const style = (byId.get(question.id) ?? byId.get(spelt(question.id)))?.fact;
  if (!style) {
    const says = { id: "material-id-not-known", with: { input: "id", given: question.id } };
    return refuse({ kind: "not-known", input: "id", given: question.id, allowed: [...byId.keys()], says });
  }
  const lines = properties.map(([property, unit, pick]) => ({ property, unit, line: pick(style) }));
  return begin().found({ id: style.id, family: style.family, parts: style.made.parts, notStated: style.made.notStated, lines });
}
