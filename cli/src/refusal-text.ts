import { inWords, type Json, type Reply } from "@ringwright/answers";
import type { UnitSystem } from "@ringwright/core/units";
import { inputName, say } from "@ringwright/words";
import { shownStep } from "@ringwright/words/workings";

type Refusal = Extract<Reply, { ok: false }>["refusal"];

/** A refusal as a person reads it: the sentence, then field, what was given and what is allowed. */
export function refusalText(refusal: Refusal, system: UnitSystem): string {
  const { input, given, allowed } = refusal;
  const lines: (readonly [string, string])[] = [
    // A name that is no field stands as it was typed: that is what has to be mended.
    ["refusal-field", refusal.kind === "unknown-field" ? input : inputName(input)],
    ...(given === undefined ? [] : [["refusal-given", plain(given)] as const]),
    ...(allowed === undefined ? [] : [["refusal-allowed", range(allowed, system)] as const]),
  ];
  return [refusal.why, ...lines.map(([id, text]) => `  ${say({ id }).padEnd(9)}${text}`)].join("\n");
}

const longest = 200;

function plain(json: Json): string {
  const text = inWords(json);
  return text.length <= longest ? text : `${text.slice(0, longest)}…`;
}

/** A range in the reader's unit; a list of words; anything else as it is. */
function range(allowed: Json, system: UnitSystem): string {
  if (Array.isArray(allowed)) return allowed.map((entry: Json) => inWords(entry)).join(", ");
  if (typeof allowed !== "object" || allowed === null) return plain(allowed);
  const { min, above, max, unit = "1" } = allowed as { readonly [name: string]: Json | undefined };
  const in_ = (value: Json | undefined) => (typeof value === "number" ? shownStep(value, String(unit), system) : undefined);
  const [low, over, high] = [in_(min), in_(above), in_(max)];
  if (low !== undefined && high !== undefined) return say({ id: "refusal-between", with: { low, high } });
  if (over !== undefined && high !== undefined) return say({ id: "refusal-above-to", with: { low: over, high } });
  if (low !== undefined) return say({ id: "refusal-least", with: { low } });
  if (over !== undefined) return say({ id: "refusal-above", with: { low: over } });
  return high === undefined ? plain(allowed) : say({ id: "refusal-most", with: { high } });
}
