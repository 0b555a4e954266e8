import { type Citation, cite } from "../sources/index.ts";
import type { Says } from "../workings/index.ts";
import type { Asked } from "./asked.ts";
import { citeFact } from "./cite-fact.ts";
import type { Judge } from "./judge.ts";
import type { Item } from "./question.ts";
import type { ReadyStyle } from "./ready.ts";

const ownSheet: Citation = cite("item-sheet");
const turningStops: Says = { id: "never-on-a-turning-shaft" };
const turningSlow: Says = { id: "only-on-a-slow-shaft" };
const lotNeeded: Says = { id: "oxygen-lot-needed" };
const lotGives: Says = { id: "oxygen-lot-recorded" };
const oilStops: Says = { id: "oxygen-lubricated-stops" };
const clearByLot: Says = { id: "clear-by-oxygen-lot" };
const leadStops: Says = { id: "lead-stops" };
const listingNeeded: Says = { id: "listing-needed" };
const clearByListing: Says = { id: "clear-by-listing" };
const listingGiven: Says = { id: "listing-recorded" };
const listingAgainst: Says = { id: "listing-against-the-usual" };
const releaseStops: Says = { id: "product-may-not-be-the-film" };
const clearByFilm: Says = { id: "clear-by-flush-or-grease" };

/** Styles that never go on a turning shaft; a slow agitator is warned of only. */
export function checkMotion(judge: Judge, style: ReadyStyle, asked: Asked): void {
  if (!style.notTurning || !asked.rotating) return;
  if (asked.service.motion === "turning") judge.say("stop", "motion", turningStops, style.notTurning, true);
  else judge.say("warn", "motion", turningSlow, style.notTurning, true);
}

/** Oxygen, drinking water and food. */
export function checkUse(judge: Judge, style: ReadyStyle, asked: Asked, item: Item | undefined): void {
  const { selection } = asked.ready.facts;
  if (asked.oxygen) {
    const citation = citeFact(selection.oxygen);
    const greased = style.lubricated && item?.lubricant !== "none";
    if (greased || style.fact.use.oxygen === "never") judge.say("stop", "oxygen", oilStops, citation, true);
    else if (item?.oxygenLot === true) judge.say("warn", "oxygen", lotGives, ownSheet);
    else judge.say("stop", "oxygen", lotNeeded, citation, true, clearByLot);
  }
  for (const use of ["potable", "food"] as const) {
    if (!asked[use]) continue;
    if (style.fact.id === "lead-foil") judge.say("stop", "lead", leadStops, citeFact(selection.lead), true);
    else if (!item?.listed?.includes(use)) judge.say("stop", "listing", listingNeeded, citeFact(selection[use]), true, clearByListing);
    else if (style.fact.use[use] === "never") judge.say("warn", "listing", listingAgainst, citeFact(style.fact.use));
    else judge.say("holds", "listing", listingGiven, ownSheet);
  }
}

/** Where the product may not be let out, it may not be what wets a turning shaft. */
export function checkRelease(judge: Judge, asked: Asked): void {
  const { release, film } = asked.service;
  if (release !== "not-allowed" || !asked.rotating) return;
  if (film === "product" || film === "flush-to-open-drain") {
    judge.say("stop", "release", releaseStops, citeFact(asked.ready.facts.selection.release), false, clearByFilm);
  }
}
