import { cite } from "../sources/index.ts";
import type { Says } from "../workings/index.ts";
import type { Asked } from "./asked.ts";
import { citeFact } from "./cite-fact.ts";
import type { Judge } from "./judge.ts";
import type { Item } from "./question.ts";
import type { ReadyStyle } from "./ready.ts";
import type { Reason } from "./reason.ts";

const ownSheet = cite("item-sheet");
const softStops: Says = { id: "sleeve-too-soft" };
const softWarns: Says = { id: "sleeve-below-floor" };
const softUnsure: Says = { id: "sleeve-hardness-unsure" };
const clearByHardening: Says = { id: "clear-by-harder-sleeve" };
const sleeveHolds: Says = { id: "sleeve-hard-enough" };
const preferHarder: Says = { id: "harder-sleeve-preferred" };
const galvanicStops: Says = { id: "graphite-would-eat-sleeve" };
const galvanicUnsure: Says = { id: "graphite-may-eat-sleeve" };
const galvanicInhibited: Says = { id: "graphite-inhibited" };
const galvanicReduced: Says = { id: "graphite-part-may-eat-sleeve" };
const metalCouple: Says = { id: "metal-couple-with-shaft" };
const clearByInhibitor: Says = { id: "clear-by-inhibitor-or-sleeve" };
const stiffOnWorn: Says = { id: "stiff-on-a-worn-sleeve" };
const extrudesHere: Says = { id: "end-ring-wanted-here" };
const weakInGrit: Says = { id: "weak-in-grit" };
const gasPasses: Says = { id: "gas-passes-the-braid" };

/** Hardness under the packing against the floor, and against what a hard fibre wants. */
export function checkSleeve(judge: Judge, style: ReadyStyle, asked: Asked): void {
  const { hardness, ready } = asked;
  const floor = ready.facts.sleeveFloor;
  if (hardness.floor !== "unknown") {
    const citation = citeFact(floor);
    const below = hardness.floor === "below";
    const kind = below ? (style.hardFibre ? "stop" : "warn") : hardness.floor === "unsure" ? (style.hardFibre ? "ask" : "note") : "holds";
    const says = below ? (style.hardFibre ? softStops : softWarns) : hardness.floor === "unsure" ? softUnsure : sleeveHolds;
    const clears = kind === "stop" ? { clears: clearByHardening } : {};
    const reason: Reason = { kind, constraint: "sleeve-hardness", says, citation, ...clears };
    const confidence = style.hardFibre ? "C" : "B";
    const { measured } = hardness;
    if (measured !== undefined && hardness.scale === "HB") {
      judge.weigh(reason, style.hardness, measured, style.hardness.value / measured, true, true, confidence);
    } else judge.add(reason, true, confidence);
  }
  const wanted = style.preferredHardness;
  if (!wanted || hardness.measured === undefined || hardness.floor === "below" || hardness.measured >= wanted[hardness.scale]) return;
  const gritty = asked.solids === "fine" || asked.solids === "coarse";
  judge.say(gritty ? "warn" : "note", "sleeve-hardness", preferHarder, citeFact(style.fact.sleeve.preferred));
}

/** Graphite or carbon on chromium or carbon steel with a liquid that conducts. */
export function checkGalvanic(judge: Judge, style: ReadyStyle, asked: Asked, item: Item | undefined): void {
  const couple = style.fact.galvanic.class;
  if (couple === null || couple === "none") return;
  const { sleeve, conducts } = asked;
  const { galvanic } = asked.ready.facts.selection;
  const wet = conducts === true || sleeve.wetWhenIdle === true;
  if (couple === "metal") {
    if (wet) judge.say("warn", "galvanic", metalCouple, citeFact(style.fact.galvanic));
    return;
  }
  if (sleeve.material !== undefined && !galvanic.sleeves.includes(sleeve.material)) return;
  const citation = citeFact(galvanic);
  const atRisk = sleeve.material !== undefined;
  if (!wet) {
    if (conducts === null && atRisk) judge.say("ask", "galvanic", galvanicUnsure, citation, true);
    return;
  }
  if (item?.inhibited === true) judge.say("warn", "galvanic", galvanicInhibited, ownSheet);
  else if (couple === "reduced") judge.say("warn", "galvanic", galvanicReduced, citeFact(style.fact.galvanic));
  else if (atRisk) judge.say("stop", "galvanic", galvanicStops, citation, true, clearByInhibitor);
  else judge.say("warn", "galvanic", galvanicUnsure, citation, true);
}

/** Wear, gaps, grit and gas: warnings only. */
export function checkEquipment(judge: Judge, style: ReadyStyle, asked: Asked): void {
  const { fact } = style;
  const { condition, ready, solids } = asked;
  const worn = condition.overall === "worn" || condition.overall === "poor";
  if (worn && fact.conformity.class === 1) judge.say("warn", "condition", stiffOnWorn, citeFact(fact.conformity), fact.conformity.seen);
  const widest = Math.max(condition.throatGap ?? 0, condition.followerGap ?? 0);
  if (widest > (ready.facts.throatGap.value ?? Infinity) && (fact.extrusion.class ?? 0) >= 2) {
    judge.say("warn", "extrusion", extrudesHere, citeFact(ready.facts.throatGap));
  }
  const tolerance = fact.abrasives.class;
  if (tolerance !== null && ((solids === "fine" && tolerance < 2) || (solids === "coarse" && tolerance < 3))) {
    judge.say("warn", "abrasives", weakInGrit, citeFact(fact.abrasives), fact.abrasives.seen);
  }
  if (asked.gas === true && !asked.steam && fact.made.construction === "braid") {
    judge.say("warn", "gas", gasPasses, citeFact(ready.facts.selection.gas));
  }
}
