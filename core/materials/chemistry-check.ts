import { type Citation, cite } from "../sources/index.ts";
import type { Says } from "../workings/index.ts";
import type { Asked } from "./asked.ts";
import { citeFact, noFigure } from "./cite-fact.ts";
import type { Lubricant } from "./facts.ts";
import type { Judge } from "./judge.ts";
import { kindsOfLimit, shownAs } from "./limit.ts";
import type { Item } from "./question.ts";
import type { ReadyStyle } from "./ready.ts";

const ownSheet: Citation = cite("item-sheet");
const noJacket: Says = { id: "jacket-not-said" };
const noRubber: Says = { id: "rubber-not-said" };
/** What a style leaves open about its make. */
const notStated: Readonly<Record<string, Says>> = {
  carrier: { id: "carrier-not-stated" },
  treatment: { id: "treatment-not-stated" },
  wire: { id: "wire-not-stated" },
  lubricant: { id: "lubricant-not-stated" },
  core: { id: "core-not-stated" },
};

/** Everything that touches the packing against everything it is made of. A memory-only "no" gives way to the item's own chart, if that was recorded. */
export function checkChemistry(judge: Judge, style: ReadyStyle, asked: Asked, item: Item | undefined): void {
  const { made } = style.fact;
  if (made.construction === "over-core") checkCore(judge, asked, item);
  else checkMeetings(judge, style, asked, item);
  const lubricant = item?.lubricant === undefined ? undefined : asked.ready.lubricants.get(item.lubricant);
  if (lubricant) checkLubricant(judge, asked, lubricant);
  if (asked.fluids.length === 0) return;
  for (const part of made.notStated) {
    if (part === "jacket" || part === "rubber" || (part === "lubricant" && item?.lubricant !== undefined)) continue;
    const says = notStated[part];
    const attacked = part === "lubricant" && asked.fluids.some((row) => asked.ready.attacksLubricants[row]);
    if (says) judge.say(attacked ? "ask" : "note", "chemistry", says, noFigure);
  }
}

function checkMeetings(judge: Judge, style: ReadyStyle, asked: Asked, item: Item | undefined): void {
  for (const row of asked.fluids) {
    const meeting = style.meetings[row];
    if (!meeting) continue;
    const { reason, seen } = meeting;
    const fluid = asked.ready.facts.fluids[row]?.id ?? "";
    const overridden =
      reason.kind === "stop" && !seen && fluid !== "oxygen-gas" && item?.suits?.includes(fluid) && item.sheet !== undefined;
    if (overridden && item?.sheet !== undefined) {
      const says: Says = { id: "chemistry-overridden", with: { fluid, sheet: item.sheet, by: item.recordedBy ?? "not-said" } };
      judge.say("warn", "chemistry", says, ownSheet);
    } else judge.add(reason, seen, seen ? "B" : "C");
  }
}

/** A braid over a core is as good as its jacket and its rubber; neither is part of the style. */
function checkCore(judge: Judge, asked: Asked, item: Item | undefined): void {
  const jacket = item?.jacket === undefined ? undefined : asked.ready.byId.get(item.jacket);
  const rubber = item?.rubber === undefined ? undefined : asked.ready.rubbers.get(item.rubber);
  if (jacket && jacket.fact.made.construction !== "over-core") checkMeetings(judge, jacket, asked, item);
  else judge.say("ask", "chemistry", noJacket, noFigure);
  if (!rubber) {
    judge.say("ask", "rubber", noRubber, noFigure);
    return;
  }
  for (const row of asked.fluids) {
    const fluid = asked.ready.facts.fluids[row]?.id ?? "";
    const against = rubber.not.fluids.includes(fluid);
    const fact = against ? rubber.not : rubber.suits;
    const kind = against ? "stop" : rubber.suits.fluids.includes(fluid) ? "holds" : "ask";
    const id = against ? "rubber-stops" : kind === "holds" ? "rubber-holds" : "rubber-not-known";
    judge.say(kind, "rubber", { id, with: { fluid, rubber: rubber.id } }, kind === "ask" ? noFigure : citeFact(fact));
  }
  const { temperature } = asked;
  const limit = rubber.temperature.value;
  if (temperature && limit !== null) {
    const over = temperature.value > limit;
    const shown = shownAs(kindsOfLimit.temperature, limit);
    const says: Says = {
      id: over ? "rubber-too-hot" : "rubber-bears-heat",
      with: { given: temperature.shown, limit: shown, rubber: rubber.id },
    };
    judge.say(over ? "stop" : "holds", "rubber", says, citeFact(rubber.temperature));
  }
}

/** The lubricant that the item is said to have: its fluids, its heat, its acidity. */
function checkLubricant(judge: Judge, asked: Asked, lubricant: Lubricant): void {
  const { id, chemistry, temperature, pH } = lubricant;
  for (const row of chemistry === undefined ? [] : asked.fluids) {
    const fluid = asked.ready.facts.fluids[row];
    const cell = chemistry === undefined ? undefined : fluid?.cells[chemistry];
    if (!fluid || !cell || cell.rating === "S") continue;
    const says: Says = { id: cell.rating === "N" ? "chemistry-stops" : "chemistry-caution", with: { fluid: fluid.id, chemistry: id } };
    judge.say(cell.rating === "N" ? "stop" : "warn", "chemistry", says, citeFact(cell), cell.seen);
  }
  const hot = asked.temperature;
  const airReaches = asked.atmospheres.some((atmosphere) => atmosphere === "air" || atmosphere === "other");
  if (hot && temperature.value !== null && hot.value > temperature.value && (!lubricant.burns || airReaches)) {
    const limit = shownAs(kindsOfLimit.temperature, temperature.value);
    const says: Says = { id: "lubricant-too-hot", with: { given: hot.shown, limit, lubricant: id } };
    judge.say("stop", "temperature", says, citeFact(temperature), temperature.seen, { id: "clear-by-cooling", with: { limit } });
  }
  const acid = asked.pH;
  if (acid && pH.min !== null && pH.max !== null && (acid.value < pH.min || acid.value > pH.max)) {
    const says: Says = { id: "lubricant-wrong-ph", with: { given: acid.shown, low: pH.min, high: pH.max, lubricant: id } };
    judge.say("stop", "ph", says, citeFact(pH), pH.seen);
  }
}
