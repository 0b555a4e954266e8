import type { Temperature } from "../units/index.ts";
import { type Answer, begin, outside, refuse } from "../workings/index.ts";
import { citeFact } from "./cite-fact.ts";
import type { EndRing, LanternMaterial, MaterialsFacts, SleeveMaterial } from "./facts.ts";
import { kindsOfLimit, marginRule } from "./limit.ts";
import { ready, spelt } from "./ready.ts";

/** What is left of a lantern ring's temperature limit. */
const lanternMargin = new WeakMap<LanternMaterial, ReturnType<typeof marginRule>>();

function marginOf(lantern: LanternMaterial) {
  const kept = lanternMargin.get(lantern);
  if (kept) return kept;
  const made = marginRule(`lantern-${lantern.id}-margin`, kindsOfLimit.temperature, "temperature", citeFact(lantern.temperature));
  lanternMargin.set(lantern, made);
  return made;
}

export interface LanternChoice {
  readonly fact: LanternMaterial;
  /** `ask`: no limit is known. `look`: close to its limit. `stop`: too hot, or a fluid it must not meet. */
  readonly standing: "fits" | "look" | "ask" | "stop";
  readonly limit?: Temperature;
}

export interface RingMaterials {
  readonly lanterns: readonly LanternChoice[];
  /** End rings against extrusion; those for the style first asked for, if one was. */
  readonly ends: readonly EndRing[];
  readonly sleeves: readonly SleeveMaterial[];
}

/**
 * What lantern ring, end rings and sleeve can be of: which lantern ring
 * materials stand the temperature and the fluids, which end rings go with a
 * style, what each sleeve material is for and how hard it usually is.
 *
 *   ΔT = T_max − T; too hot below 0, not known where no limit is
 *
 * Units: temperature K; hardness on its own scale.
 * Range: temperature 1 to 4000 K; ids of data/materials. Refused otherwise.
 * Source: each fact carries its own.
 * @example ringMaterials({ temperature: quantity("temperature", 220, "degC") }, facts) // ptfe: stop, peek: fits
 */
export function ringMaterials(
  question: { readonly temperature?: Temperature; readonly fluids?: readonly string[]; readonly style?: string },
  facts: MaterialsFacts,
): Answer<RingMaterials> {
  const { temperature } = question;
  const refused = outside([["temperature", temperature ?? 300, { min: 1, max: 4000 }, "K"]]);
  if (refused) return refused;
  const { fluidIndex, byId } = ready(facts);
  const fluids = (question.fluids ?? []).map(spelt);
  const unknown = fluids.findIndex((fluid) => !fluidIndex.has(fluid));
  if (unknown >= 0) return notKnown(`fluids[${unknown}]`, question.fluids?.[unknown] ?? "", fluidIndex.keys());
  const style = question.style === undefined ? undefined : spelt(question.style);
  if (style !== undefined && !byId.has(style)) return notKnown("style", question.style ?? "", byId.keys());
  const work = begin();
  const lanterns = facts.lanternMaterials.map((fact): LanternChoice => {
    const { value, warnAt } = fact.temperature;
    const attacked = fact.use.not.some((id) => fluids.includes(id));
    if (value === null) return { fact, standing: attacked ? "stop" : "ask" };
    if (temperature !== undefined) work.step(marginOf(fact), [temperature, value], value - temperature);
    const hot = temperature !== undefined && temperature > value;
    const near = temperature !== undefined && temperature > (warnAt ?? value);
    return { fact, standing: attacked || hot ? "stop" : near ? "look" : "fits", limit: value };
  });
  const ends =
    style === undefined ? facts.endRings : facts.endRings.filter((end) => end.use.for.length === 0 || end.use.for.includes(style));
  return work.found({ lanterns, ends, sleeves: facts.sleeves });
}

function notKnown(input: string, given: string, allowed: Iterable<string>) {
  return refuse({ kind: "not-known", input, given, allowed: [...allowed], says: { id: "material-id-not-known", with: { input, given } } });
}
