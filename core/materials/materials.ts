import { cite } from "../sources/index.ts";
import { type Answer, begin, outside, type Refused, type Rule, refuse, type Says } from "../workings/index.ts";
import { type Asked, putInOrder } from "./asked.ts";
import { checkChemistry } from "./chemistry-check.ts";
import { checkEquipment, checkGalvanic, checkSleeve } from "./equipment-checks.ts";
import type { MaterialsFacts } from "./facts.ts";
import { Judge } from "./judge.ts";
import { checkHeatAndAcid, checkSpeedAndPressure } from "./limit-checks.ts";
import type { Item, Service } from "./question.ts";
import { type Ready, type ReadyStyle, ready, spelt } from "./ready.ts";
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

/** Refuses an id that the facts do not have, with those that they do. */
function unknownId(input: string, given: string, allowed: Iterable<string>): Refused {
  return refuse({ kind: "not-known", input, given, allowed: [...allowed], says: { id: "material-id-not-known", with: { input, given } } });
}

function numbersOutside(service: Service): Refused | undefined {
  const { temperature, pressure, speed, pH, sleeve, condition, index } = service;
  return outside([
    ["temperature", temperature ?? 300, { min: 1, max: 4000 }, "K"],
    ["pressure", pressure ?? 0, { min: -1.1e5, max: 1e9 }, "Pa"],
    ["speed", speed ?? 0, { min: 0, max: 300 }, "m/s"],
    ["pH", pH ?? 7, { min: -2, max: 16 }, "1"],
    ["sleeve.hardness", sleeve?.hardness ?? 250, { min: 1, max: 5000 }, "1"],
    ["condition.throatGap", condition?.throatGap ?? 0, { min: 0, max: 1 }, "m"],
    ["condition.followerGap", condition?.followerGap ?? 0, { min: 0, max: 1 }, "m"],
    ["index.check", index?.check ?? 1, { min: 0, max: 100 }, "1"],
    ["index.ask", index?.ask ?? 1, { min: 0, max: 100 }, "1"],
  ]);
}

function itemOutside(item: Item, at: string): Refused | undefined {
  return outside([
    [`${at}.temperature`, item.temperature ?? 300, { min: 1, max: 4000 }, "K"],
    [`${at}.pressure`, item.pressure ?? 0, { min: 0, max: 1e9 }, "Pa"],
    [`${at}.speed`, item.speed ?? 0, { min: 0, max: 300 }, "m/s"],
    [`${at}.pHMin`, item.pHMin ?? 7, { min: -2, max: 16 }, "1"],
    [`${at}.pHMax`, item.pHMax ?? 7, { min: -2, max: 16 }, "1"],
  ]);
}

/** The question with every id as the files spell it, or a refusal that names the first that is not there. */
function withIds(made: Ready, service: Service): Service | Refused {
  const find = (id: string, among: { has(id: string): boolean }) => (among.has(id) ? id : among.has(spelt(id)) ? spelt(id) : undefined);
  const fluids: string[] = [];
  for (const [at, fluid] of (service.fluids ?? []).entries()) {
    const id = find(fluid, made.fluidIndex);
    if (id === undefined) return unknownId(`fluids[${at}]`, fluid, made.fluidIndex.keys());
    fluids.push(id);
  }
  const { sleeve } = service;
  const material = sleeve?.material === undefined ? undefined : find(sleeve.material, made.sleeves);
  if (sleeve?.material !== undefined && material === undefined) return unknownId("sleeve.material", sleeve.material, made.sleeves.keys());
  const items: Item[] = [];
  for (const [at, item] of (service.items ?? []).entries()) {
    const style = find(item.style, made.byId);
    if (style === undefined) return unknownId(`items[${at}].style`, item.style, made.byId.keys());
    const jacket = item.jacket === undefined ? undefined : find(item.jacket, made.byId);
    if (item.jacket !== undefined && jacket === undefined) return unknownId(`items[${at}].jacket`, item.jacket, made.byId.keys());
    const rubber = item.rubber === undefined ? undefined : find(item.rubber, made.rubbers);
    if (item.rubber !== undefined && rubber === undefined) return unknownId(`items[${at}].rubber`, item.rubber, made.rubbers.keys());
    const suits: string[] = [];
    for (const [n, fluid] of (item.suits ?? []).entries()) {
      const id = find(fluid, made.fluidIndex);
      if (id === undefined) return unknownId(`items[${at}].suits[${n}]`, fluid, made.fluidIndex.keys());
      suits.push(id);
    }
    const refused = itemOutside(item, `items[${at}]`);
    if (refused) return refused;
    items.push({ ...item, style, suits, ...(jacket === undefined ? {} : { jacket }), ...(rubber === undefined ? {} : { rubber }) });
  }
  return {
    ...service,
    ...(service.fluids ? { fluids } : {}),
    ...(sleeve && material !== undefined ? { sleeve: { ...sleeve, material } } : {}),
    items,
  };
}

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
  const refused = numbersOutside(service);
  if (refused) return refused;
  const made = ready(facts);
  const named = withIds(made, service);
  if ("ok" in named) return named;
  const asked = putInOrder(made, named);
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
