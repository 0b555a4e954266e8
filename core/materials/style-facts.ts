import type { Density, Length, Stress } from "../units/index.ts";
import type { Band, Rule } from "../workings/index.ts";
import { type Answer, begin, refuse, rule } from "../workings/index.ts";
import { citeFact } from "./cite-fact.ts";
import type { BandOf, Figure, MaterialsFacts, SeatingPolicy, Style } from "./facts.ts";
import type { Family } from "./families.ts";
import { ready, spelt } from "./ready.ts";

/** A figure to use, and how far it may be off. */
export interface Setting {
  readonly typical: number;
  readonly band: Band;
}

/** What other topics need to know of one style. A member left out is not known. */
export interface StyleFacts {
  readonly style: string;
  readonly family: Family;
  /** Radial stress over axial stress, K. */
  readonly ratio?: Setting;
  /** Coefficient of friction on steel, standing or creeping. */
  readonly friction?: Setting;
  /** Share of the volume lost when the rings are seated. */
  readonly seatingLoss?: Band;
  readonly density?: Band<Density>;
  /** Gap to leave between the ends of a cut ring. */
  readonly gap?: Band<Length>;
  readonly seating?: SeatingPolicy;
  /** Linear thermal expansion, 1/K. */
  readonly expansion?: Band;
  readonly zeroDripAllowed?: boolean;
  /** Gland stress usual on a stem. */
  readonly stemGlandStress?: Band<Stress>;
  /** 0 hardly extrudes to 4 flows out. */
  readonly extrusion?: number;
}

interface Prepared {
  readonly facts: StyleFacts;
  readonly assumed: readonly (readonly [Rule, number])[];
}

const prepared = new WeakMap<Style, Prepared>();

function assumption(id: string, symbol: string, unit: string, fact: BandOf | Figure, low: number, high: number): Rule {
  return rule({ id, symbol, expression: symbol, unit, inputs: [], citation: citeFact(fact), assumed: { min: low, max: high } });
}

function prepare(style: Style): Prepared {
  const assumed: (readonly [Rule, number])[] = [];
  const setting = (figure: Figure, name: string, symbol: string): Setting | undefined => {
    if (figure.value === null) return undefined;
    const [low, high] = figure.spread ?? [figure.value, figure.value];
    assumed.push([assumption(`${style.id}-${name}`, symbol, "1", figure, low, high), figure.value]);
    return { typical: figure.value, band: { low, high } };
  };
  const between = <Q extends number>(fact: BandOf<Q>, name: string, symbol: string, unit: string): Band<Q> | undefined => {
    if (fact.min === null || fact.max === null) return undefined;
    assumed.push([assumption(`${style.id}-${name}`, symbol, unit, fact, fact.min, fact.max), (fact.min + fact.max) / 2]);
    return { low: fact.min, high: fact.max };
  };
  const known: { -readonly [N in keyof StyleFacts]: StyleFacts[N] | undefined } = {
    style: style.id,
    family: style.family,
    ratio: setting(style.ratio, "stress-ratio", "K"),
    friction: setting(style.friction, "friction", "μ"),
    seatingLoss: between(style.seatingLoss, "seating-loss", "ε", "1"),
    density: between(style.density, "density", "ρ", "kg/m3"),
    gap: between(style.gap, "end-gap", "g", "m"),
    seating: style.seating.policy ?? undefined,
    expansion: between(style.expansion, "expansion", "α", "1/K"),
    zeroDripAllowed: style.zeroDrip.value ?? undefined,
    stemGlandStress: between(style.glandStress.stem, "stem-gland-stress", "σ", "Pa"),
    extrusion: style.extrusion.class ?? undefined,
  };
  const facts = Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined));
  return { facts: facts as unknown as StyleFacts, assumed };
}

/**
 * What is known of one style that other calculations take: stress ratio,
 * friction, loss when seated, density, gap between ring ends, way of seating,
 * expansion, whether no drip may be lived with, gland stress on a stem. A
 * figure comes with the spread of what sources give; a member left out is not
 * known and never 0.
 *
 *   K, μ, ε, ρ, g, α, σ as printed or remembered; each stands in the workings as an assumption with its spread
 *
 * Units: ratio, friction, loss plain; density kg/m³, gap m, expansion 1/K, stress Pa.
 * Range: ids of data/materials/styles, underscores and capitals forgiven; any other is refused as not known.
 * Source: each figure carries its own; most are memory and say so.
 * @example styleFacts("eg-braid", facts) // ratio 0.5 (0.5 to 0.9), friction 0.1 (0.05 to 0.15)
 */
export function styleFacts(id: string, facts: MaterialsFacts): Answer<StyleFacts> {
  const { byId } = ready(facts);
  const style = (byId.get(id) ?? byId.get(spelt(id)))?.fact;
  if (!style) {
    return refuse({
      kind: "not-known",
      input: "material",
      given: id,
      allowed: [...byId.keys()],
      says: { id: "material-id-not-known", with: { input: "material", given: id } },
    });
  }
  const kept = prepared.get(style) ?? prepare(style);
  prepared.set(style, kept);
  const work = begin();
  for (const [assumedRule, value] of kept.assumed) work.assume(assumedRule, value);
  return work.found(kept.facts);
}

/**
 * The family of a style: graphite, carbon, ptfe, aramid, novoloid, acrylic,
 * glass, vegetable-fibre, melamine, metal, injectable, elastomer-core. A
 * hybrid belongs to what its corners are of.
 *
 * Units: none.
 * Range: ids of data/materials/styles; `undefined` for any other.
 * Source: the name of the style, common practice.
 * @example familyOf("eptfe-graphite", facts) // "ptfe"
 */
export function familyOf(id: string, facts: MaterialsFacts): Family | undefined {
  const { byId } = ready(facts);
  return (byId.get(id) ?? byId.get(spelt(id)))?.fact.family;
}
