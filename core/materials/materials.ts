import { cite } from "../sources/index.ts";
import { type Answer, begin, type Rule, type Says } from "../workings/index.ts";
import { type Asked, putInOrder } from "./asked.ts";
import { checkChemistry } from "./chemistry-check.ts";
import { checkEquipment, checkGalvanic, checkSleeve } from "./equipment-checks.ts";
import type { MaterialsFacts } from "./facts.ts";
import { Judge } from "./judge.ts";
import { checkHeatAndAcid, checkSpeedAndPressure } from "./limit-checks.ts";
import type { Service } from "./question.ts";
import { readService } from "./read-service.ts";
import { type ReadyStyle, ready } from "./ready.ts";
import type { Candidate, ConstraintId, Reason, Rejected } from "./reason.ts";
import { scoreParts } from "./score.ts";
import { type Sensitive, Sensitivity } from "./sensitive.ts";
import { noteService } from "./service-notes.ts";
import { checkMotion, checkRelease, checkUse } from "./use-checks.ts";

/** What one change would let in: a style that fails on a single constraint. */
interface Nearly {
  readonly style: string;
  readonly constraint: ConstraintId;
  /** What would clear it. */
  readonly clears: Says;
}

export interface Materials {
  /** Best first. */
  readonly ranked: readonly Candidate[];
  readonly rejected: readonly Rejected[];
  readonly nearly: readonly Nearly[];
  readonly sensitive: readonly Sensitive[];
}

const nothing: Reason = {
  kind: "note",
  constraint: "nothing-to-compare",
  says: { id: "nothing-to-compare" },
  citation: cite("own-proposal"),
};

function judged(style: ReadyStyle, asked: Asked): Judge {
  const judge = new Judge();
  const item = asked.items.get(style.fact.id);
  checkRelease(judge, asked);
  checkUse(judge, style, asked, item);
  checkMotion(judge, style, asked);
  checkChemistry(judge, style, asked, item);
  checkGalvanic(judge, style, asked, item);
  checkSleeve(judge, style, asked);
  checkHeatAndAcid(judge, style, asked, item);
  checkSpeedAndPressure(judge, style, asked, item);
  checkEquipment(judge, style, asked);
  return judge;
}

/**
 * Which kinds of packing may be used, best first, each with the one constraint
 * that is tightest; which may not, each with the one that stops it; and what
 * would clear it. A limit that is not known never passes in silence.
 *
 *   stop: chemistry "no", heat, cold, acidity, oxygen, listing, lead, graphite on wet steel, hard fibre on a soft sleeve, stem styles on a turning shaft
 *   warn: between the careful figure and the most that any source gives (speed, pressure), within one unit of an end of the acidity, above nine tenths of a temperature limit
 *   score: S = Σ weight · fit, each part listed; equal scores go by fewer warnings, then by id
 *
 * Units: temperature K, pressure Pa, speed m/s, gaps m; hardness on its own scale; pH, score and shares plain.
 * Range: temperature 1 to 4000 K, pressure from -1.1e5 Pa, speed 0 to 300 m/s, pH -2 to 16; ids must be in data/materials. Refused otherwise, NaN too.
 * Source: each limit carries its own; the choosing rules and weights are our own proposal.
 * @example materials({ motion: "turning", fluids: ["sulfuric-concentrated-above-70"] }, facts) // rejected: aramid-filament on chemistry, …
 */
export function materials(service: Service, facts: MaterialsFacts): Answer<Materials> {
  const made = ready(facts);
  const read = readService(service, made);
  if ("ok" in read) return read;
  const asked = putInOrder(made, read);
  const work = begin();
  noteService(work, asked);

  const writeStep = (margin: Rule, inputs: readonly number[], value: number) => void work.step(margin, inputs, value);
  const ranked: (Candidate & { readonly warnings: number })[] = [];
  const rejected: Rejected[] = [];
  const nearly: Nearly[] = [];
  const sensitivity = new Sensitivity();
  for (const style of made.styles) {
    const judge = judged(style, asked);
    const { id, family } = style.fact;
    const binding = judge.binding(nothing);
    judge.writeMargin(writeStep);
    sensitivity.look(id, judge);
    if (judge.stops > 0) {
      rejected.push({ style: id, family, binding, because: judge.reasons });
      const clears = judge.firstStop?.clears;
      if (judge.stops === 1 && judge.firstStop && clears) nearly.push({ style: id, constraint: judge.firstStop.constraint, clears });
      continue;
    }
    if (judge.index) work.step(judge.index[0], judge.index[1], judge.index[2]);
    const contributions = scoreParts(style, asked, judge);
    let score = 0;
    for (const part of contributions) score += part;
    work.step(style.scoreRule, contributions, score);
    const standing = judge.asks > 0 ? "ask" : judge.warnings > 0 ? "look" : "fits";
    ranked.push({ style: id, family, standing, score, contributions, binding, because: judge.reasons, warnings: judge.warnings });
  }
  ranked.sort((a, b) => b.score - a.score || a.warnings - b.warnings || (a.style < b.style ? -1 : 1));
  if (ranked.length === 0) work.warn({ kind: "limit", says: { id: "no-material-fits" } });
  return work.found({ ranked, rejected, nearly, sensitive: sensitivity.found() });
}
