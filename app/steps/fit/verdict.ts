import { ringDepth, type Step } from "@ringwright/core/fit";
import type { Length } from "@ringwright/core/units";
import type { Says, Shown } from "@ringwright/core/workings";

/** What a number that was found says: go on, look, or stop. */
export interface Verdict {
  readonly tone: "fine" | "look" | "stop";
  readonly says: readonly Says[];
  /** Found less expected, in SI; none where nothing was expected. */
  readonly off?: number;
}

/**
 * A number found against what the plan expected and the limits of its step.
 * `expected` is what the job kept, where it was written down before.
 */
export function verdictOn(step: Step, found: number, expected = step.predicted?.value): Verdict {
  const { measures, tolerance, most, least } = step;
  const off = expected === undefined ? undefined : found - expected;
  const beside = off === undefined ? {} : { off };
  const shown = (value: number): Shown => (measures === "count" || measures === "rate" ? value : { value, kind: measures ?? "" });
  if (most && found > most.value) return { tone: "look", says: [{ id: "fitting-over", with: { limit: shown(most.value) } }], ...beside };
  if (least && found < least.value)
    return { tone: "look", says: [{ id: "fitting-under", with: { limit: shown(least.value) } }], ...beside };
  if (expected === undefined || off === undefined) return { tone: "fine", says: most || least ? [{ id: "fitting-in-range" }] : [] };
  if (measures === "pressure" && expected === 0)
    return found === 0 ? { tone: "fine", says: [{ id: "fitting-fits" }], off } : { tone: "stop", says: [{ id: "fitting-not-zero" }], off };
  if (measures === "count") return { ...counted(off), off };
  if (!tolerance) return { tone: "fine", says: [], off };
  const ring = ringDepth({ found: found as Length, predicted: expected as Length, ringHeight: (2 * tolerance.value) as Length });
  if (!ring.ok) return { tone: "stop", says: [ring.refusal.says, { id: "fitting-stop-other" }], off };
  if (ring.value.verdict === "go-on") return { tone: "fine", says: [ring.value.says], off };
  return { tone: "stop", says: [ring.value.says, { id: off > 0 ? "fitting-stop-deeper" : "fitting-stop-shallower" }], off };
}

function counted(off: number): Pick<Verdict, "tone" | "says"> {
  if (off === 0) return { tone: "fine", says: [{ id: "fitting-fits" }] };
  return { tone: "look", says: [{ id: off > 0 ? "fitting-count-more" : "fitting-count-less", with: { off: Math.abs(off) } }] };
}
