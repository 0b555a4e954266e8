import { datums, type Motion, motions, releases, uses, zones } from "@ringwright/core/box";
import { oldPackings, services } from "@ringwright/core/cautions";
import { conditionSightings } from "@ringwright/core/condition";
import { boxDesigns, flushServices, impellerDiameters } from "@ringwright/core/flush";
import { nutConditions } from "@ringwright/core/gland";
import { phases, solidsLevels } from "@ringwright/core/materials";
import type { How } from "@ringwright/core/uncertainty";
import type { Kind } from "@ringwright/core/units";
import { type Asks, type Known, known, type Question } from "./question.ts";

const pumps: readonly Motion[] = ["turning"];
const turning: readonly Motion[] = ["turning", "slow-agitator"];
const rods: readonly Motion[] = ["stroking"];
const stems: readonly Motion[] = ["rising-stem", "quarter-turn-stem"];
const notStems: readonly Motion[] = ["turning", "stroking", "slow-agitator"];

const across: readonly How[] = ["micrometer", "caliper", "rule"];
const inside: readonly How[] = ["bore-gauge", "micrometer", "caliper", "caliper-at-mouth", "rule"];
const deep: readonly How[] = ["depth-gauge", "caliper", "wire", "rule"];

const dimension = (hows: readonly How[], twice = true): Asks => ({ is: "dimension", hows, twice });
const quantity = (kind: Kind, common?: readonly string[]): Asks =>
  common === undefined ? { is: "quantity", kind } : { is: "quantity", kind, common };
const length = quantity("length");
const unknowns: ReadonlySet<string> = new Set(["unknown", "not-known"]);
/** One of the words that core knows; its word for "don't know" is the button of that name. */
const oneOf = (options: readonly string[]): Asks => ({
  is: "choice",
  options: options.filter((option) => !unknowns.has(option)),
  unknown: options.find((option) => unknowns.has(option)) ?? null,
});
const seen = (what: keyof typeof conditionSightings) => oneOf(conditionSightings[what]);
const yesNoUnknown: Asks = { is: "choice", options: ["yes", "no"], unknown: "unknown" };
const yesNo: Asks = { is: "yes-no" };

const isTrue = (field: string) => (of: Known) => known(of, field) === true;
const isNot = (field: string, value: unknown) => (of: Known) => known(of, field) !== value;
/** Answered with "don't know". */
const notKnown = (field: string) => (of: Known) => known(of, field) === null;
const lantern = isTrue("lantern.wanted");
const flushed = isTrue("flush.fitted");

/** Drill sizes that flush ports are made with, and threads of gland studs: common practice, no source. */
const ports = ["3 mm", "4 mm", "5 mm", "6 mm", "8 mm", "10 mm", "12 mm", "1/8 in", "1/4 in", "3/8 in", "1/2 in"];
const threads = ["M8", "M10", "M12", "M16", "M20", "M24", "3/8-16", "1/2-13", "5/8-11", "3/4-10"];
const classes = ["4.6", "5.6", "8.8", "10.9", "A2-70", "A4-80"];

/** Every question of the survey, in the order of the work. */
export const questions: readonly Question[] = [
  { id: "name", field: "name", chapter: "box", asks: { is: "text" } },
  { id: "place", field: "place", chapter: "box", asks: { is: "text" } },
  { id: "motion", field: "motion", chapter: "box", asks: oneOf(motions) },
  { id: "release", field: "release", chapter: "box", asks: oneOf(releases) },
  { id: "zone", field: "zone", chapter: "box", asks: oneOf(zones) },

  { id: "shaft", field: "shaft", chapter: "shaft", asks: dimension(across), motions: turning, part: "shaft", dimension: "shaft" },
  { id: "rod", field: "shaft", chapter: "shaft", asks: dimension(across), motions: rods, part: "shaft", dimension: "shaft" },
  { id: "stem", field: "shaft", chapter: "shaft", asks: dimension(across), motions: stems, part: "shaft", dimension: "shaft" },
  { id: "bore", field: "bore", chapter: "bore", asks: dimension(inside), part: "housing", dimension: "bore" },
  { id: "depth", field: "depth", chapter: "depth", asks: dimension(deep), part: "housing", dimension: "depth" },
  { id: "throat-clearance", field: "condition.throatClearance", chapter: "depth", asks: length, part: "shaft" },
  { id: "throat-bush", field: "set.throatBush", chapter: "depth", asks: length, motions: notStems, part: "housing" },
  { id: "spacer", field: "set.spacer", chapter: "depth", asks: length, motions: stems, part: "housing" },

  { id: "lantern-wanted", field: "lantern.wanted", chapter: "lantern", asks: yesNo, part: "lantern" },
  {
    id: "lantern-width",
    field: "lantern.width",
    chapter: "lantern",
    asks: length,
    when: lantern,
    part: "lantern",
    dimension: "lantern-width",
  },
  { id: "lantern-window", field: "lantern.window", chapter: "lantern", asks: length, when: lantern, part: "lantern" },
  {
    id: "lantern-land",
    field: "lantern.land",
    chapter: "lantern",
    asks: length,
    when: (of) => lantern(of) && notKnown("lantern.window")(of),
    part: "lantern",
  },
  { id: "rings-throat-side", field: "lantern.ringsThroatSide", chapter: "lantern", asks: { is: "count" }, when: lantern, part: "ring-1" },
  { id: "port-from-face", field: "port.fromFace", chapter: "lantern", asks: length, when: lantern, part: "port", dimension: "port-at" },
  {
    id: "port-from-throat",
    field: "port.fromThroat",
    chapter: "lantern",
    asks: length,
    when: (of) => lantern(of) && notKnown("port.fromFace")(of),
    part: "port",
    dimension: "port-at",
  },
  { id: "port-diameter", field: "port.diameter", chapter: "lantern", asks: quantity("length", ports), when: lantern, part: "port" },

  { id: "nose", field: "follower.nose", chapter: "follower", asks: length, part: "follower", dimension: "nose" },
  { id: "gland-gap", field: "follower.gap", chapter: "follower", asks: length, part: "follower", dimension: "gland-gap" },
  { id: "stud-count", field: "studs.count", chapter: "follower", asks: { is: "count" }, part: "stud" },
  { id: "thread", field: "studs.thread", chapter: "follower", asks: { is: "text", common: threads }, part: "stud" },
  { id: "thread-left", field: "studs.threadLeft", chapter: "follower", asks: length, part: "stud" },
  { id: "property-class", field: "studs.propertyClass", chapter: "follower", asks: { is: "text", common: classes }, part: "stud" },
  { id: "nut-condition", field: "studs.nutCondition", chapter: "follower", asks: oneOf(nutConditions), part: "stud" },

  { id: "fluids", field: "service.fluids", chapter: "service", asks: { is: "list", of: "fluids", most: 20 } },
  { id: "phase", field: "service.phase", chapter: "service", asks: oneOf(phases) },
  { id: "temperature", field: "service.temperature", chapter: "service", asks: quantity("temperature") },
  { id: "ph", field: "service.pH", chapter: "service", asks: { is: "number" }, when: isNot("service.phase", "gas") },
  { id: "solids", field: "service.solids", chapter: "service", asks: oneOf(solidsLevels), when: isNot("service.phase", "gas") },
  { id: "use", field: "service.use", chapter: "service", asks: oneOf(uses) },
  { id: "sleeve", field: "service.sleeve", chapter: "service", asks: { is: "list", of: "sleeves", most: 1 }, part: "sleeve" },
  { id: "rotation", field: "service.rotation", chapter: "service", asks: quantity("rotation"), motions: turning, part: "shaft" },
  { id: "stroke", field: "service.stroke", chapter: "service", asks: length, motions: rods, part: "shaft" },
  { id: "pressure", field: "service.pressure", chapter: "service", asks: quantity("pressure"), motions: pumps },
  {
    id: "line-pressure",
    field: "service.pressure",
    chapter: "service",
    asks: quantity("pressure"),
    motions: [...rods, ...stems, "slow-agitator"],
  },
  { id: "suction", field: "service.suction", chapter: "service", asks: quantity("pressure"), motions: pumps },
  { id: "discharge", field: "service.discharge", chapter: "service", asks: quantity("pressure"), motions: pumps },
  { id: "impeller", field: "service.impeller", chapter: "service", asks: oneOf(boxDesigns), motions: pumps },
  {
    id: "impeller-diameter",
    field: "service.impellerDiameter",
    chapter: "service",
    asks: oneOf(impellerDiameters),
    motions: pumps,
    when: (of) => known(of, "service.impeller") === "back-vanes",
  },

  { id: "flush-fitted", field: "flush.fitted", chapter: "flush", asks: yesNo, motions: notStems, part: "port" },
  {
    id: "flush-supply",
    field: "flush.supply",
    chapter: "flush",
    asks: quantity("pressure"),
    motions: notStems,
    when: flushed,
    part: "port",
  },
  { id: "flush-set", field: "flush.set", chapter: "flush", asks: quantity("pressure"), motions: notStems, when: flushed, part: "port" },
  { id: "flush-kind", field: "flush.kind", chapter: "flush", asks: oneOf(flushServices), motions: pumps, when: flushed, part: "port" },

  { id: "sleeve-groove", field: "condition.sleeveGroove", chapter: "condition", asks: length, part: "shaft" },
  { id: "scoring", field: "condition.sightings.scoring", chapter: "condition", asks: seen("scoring"), part: "shaft" },
  { id: "nail-catches", field: "condition.sightings.nailCatches", chapter: "condition", asks: seen("nailCatches"), part: "shaft" },
  { id: "finish", field: "condition.finish", chapter: "condition", asks: length, part: "shaft" },
  { id: "surface", field: "condition.sightings.surface", chapter: "condition", asks: seen("surface"), part: "shaft" },
  { id: "hardness", field: "condition.hardness", chapter: "condition", asks: { is: "number" }, part: "shaft" },
  { id: "critical", field: "condition.critical", chapter: "condition", asks: yesNo, motions: turning, part: "shaft" },
  { id: "runout", field: "condition.runout", chapter: "condition", asks: length, motions: turning, part: "shaft" },
  { id: "shaft-lift", field: "condition.shaftLift", chapter: "condition", asks: length, motions: turning, part: "shaft" },
  { id: "end-float", field: "condition.endFloat", chapter: "condition", asks: length, motions: turning, part: "shaft" },
  { id: "datum", field: "datum", chapter: "condition", asks: oneOf(datums) },
  { id: "clock-gaps", field: "condition.clockGaps", chapter: "condition", asks: { is: "clock-gaps" }, part: "shaft" },
  { id: "bore-finish", field: "condition.boreFinish", chapter: "condition", asks: length, part: "housing" },
  { id: "follower-clearance", field: "condition.followerClearance", chapter: "condition", asks: length, part: "follower" },
  {
    id: "nose-concentric",
    field: "condition.sightings.noseConcentric",
    chapter: "condition",
    asks: seen("noseConcentric"),
    part: "follower",
  },
  {
    id: "lip-square",
    field: "condition.sightings.followerLipSquare",
    chapter: "condition",
    asks: seen("followerLipSquare"),
    part: "follower",
  },
  { id: "nuts-free", field: "condition.sightings.nutsFree", chapter: "condition", asks: seen("nutsFree"), part: "stud" },
  { id: "studs-sound", field: "condition.sightings.studsSound", chapter: "condition", asks: seen("studsSound"), part: "stud" },
  { id: "alignment", field: "condition.sightings.alignment", chapter: "condition", asks: seen("alignment"), motions: turning },
  {
    id: "renewed",
    field: "condition.renewed",
    chapter: "condition",
    asks: { is: "several", options: ["shaft", "sleeve"] },
    motions: turning,
  },
  {
    id: "alignment-again",
    field: "condition.sightings.alignmentAgain",
    chapter: "condition",
    asks: seen("alignmentAgain"),
    motions: turning,
    when: (of) => ((known(of, "condition.renewed") as readonly string[] | null | undefined)?.length ?? 0) > 0,
  },

  { id: "old-packing", field: "hazards.oldPacking", chapter: "hazards", asks: oneOf(oldPackings), part: "ring-1" },
  { id: "hot", field: "hazards.hot", chapter: "hazards", asks: yesNoUnknown },
  { id: "toxic", field: "hazards.toxic", chapter: "hazards", asks: yesNoUnknown },
  { id: "flammable", field: "hazards.flammable", chapter: "hazards", asks: yesNoUnknown },
  { id: "corrosive", field: "hazards.corrosive", chapter: "hazards", asks: yesNoUnknown },
  { id: "heating", field: "hazards.heating", chapter: "hazards", asks: yesNoUnknown },
  { id: "quench", field: "hazards.quench", chapter: "hazards", asks: yesNoUnknown, motions: notStems },
  { id: "grease", field: "hazards.grease", chapter: "hazards", asks: yesNoUnknown, motions: notStems },
  { id: "vertical", field: "hazards.vertical", chapter: "hazards", asks: yesNoUnknown, motions: notStems },
  { id: "duty", field: "hazards.service", chapter: "hazards", asks: oneOf(services), motions: pumps },
];

/** Fields of the survey that Measure leaves to others, and why. */
export const leftToOthers: Readonly<Record<string, string>> = {
  "set.rings": "settled in Rings",
  "set.endRings": "settled in Rings",
  "set.seated": "said in Fit, when the rings are in",
  "set.section": "settled in Choose, from shaft and bore",
  "set.series": "what the stores keep, said in Choose",
  "set.cut": "settled in Rings",
  "set.angle": "settled in Rings",
  "set.style": "settled in Choose",
  "set.glandStress": "settled in Rings, from the packing",
  "condition.houseLimits": "a limit is set with who set it, beside its verdict",
  "hazards.ringForm": "comes with the packing, in Choose",
  "hazards.seating": "comes with the packing, in Choose",
};

/** The questions of one box, in order: its shaft's list, less what the answers so far leave no need for. */
export function questionsFor(of: Known): readonly Question[] {
  const motion = of.motion as Motion | null | undefined;
  return questions.filter(({ field, motions: asked, when }) => {
    if (motion === undefined || motion === null) return field === "motion";
    return (asked === undefined || asked.includes(motion)) && (when === undefined || when(of));
  });
}
