import { type Answer, begin, refuse } from "../workings/index.ts";
import type { MaterialsFacts, Style } from "./facts.ts";
import { ready, spelt } from "./ready.ts";

/**
 * One generic style with everything that is known of it, each figure with
 * where it comes from, how it was seen and how far it can be leaned on.
 *
 * Units: K, Pa, m/s, kg/m³, m; hardness on its own scale.
 * Range: ids of data/materials/styles, underscores and capitals forgiven; any other is refused as not known.
 * Source: each figure carries its own.
 * @example material({ id: "ramie-flax-ptfe" }, facts)
 */
export function material(question: { readonly id: string }, facts: MaterialsFacts): Answer<Style> {
  const { byId } = ready(facts);
  const style = (byId.get(question.id) ?? byId.get(spelt(question.id)))?.fact;
  if (style) return begin().found(style);
  return refuse({
    kind: "not-known",
    input: "id",
    given: question.id,
    allowed: [...byId.keys()],
    says: { id: "id-not-known", with: { input: "id", given: question.id } },
  });
}
