import { motions } from "@ringwright/core/box";
import { families } from "@ringwright/core/materials";
import {
  bindings,
  buttGap,
  coil,
  cuts,
  endRings,
  gapPolicies,
  joints,
  type Opinion,
  partKinds,
  ringCut,
  ringSet,
  seatings,
} from "@ringwright/core/rings";
import { type SourceId, sources } from "@ringwright/core/sources";
import type { Length } from "@ringwright/core/units";
import type { Uncertain } from "@ringwright/core/workings";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, countField, groupField, numberField, optional, quantityField, yesNoField } from "../field.ts";
import {
  bandShape,
  choiceShape,
  countShape,
  groupShape,
  listShape,
  maybe,
  numberShape,
  quantityShape,
  type Shape,
  textShape,
  uncertainShape,
} from "../shape.ts";
import { limitMembers } from "./lantern.ts";

const length = quantityShape("length");

/** A length that carries its standard uncertainty only where something is known of it. */
const lengthShape: Shape<Uncertain<Length>> = {
  schema: uncertainShape("length").schema,
  write: (value) => (value.u > 0 ? uncertainShape("length").write(value) : length.write(value.mean)),
};

/** Where an opinion stands, as a reader would look for it. */
const citationShape: Shape<Opinion["citation"]> = {
  schema: {
    type: "object",
    properties: { source: { type: "string" }, title: { type: "string" }, at: { type: "string" }, seen: { type: "string" } },
    required: ["source", "title", "seen"],
    additionalProperties: false,
  },
  write: ({ source, at, seen }) => {
    const { title, seen: usually }: { title: string; seen: string } = sources[source as SourceId];
    return { source, title, ...(at === undefined ? {} : { at }), seen: seen ?? usually };
  },
};

/** What someone prints of a length: at least, or from and to. */
const lengthOpinion: Shape<Opinion> = groupShape({
  low: length,
  high: maybe(length),
  citation: citationShape,
}) as unknown as Shape<Opinion>;
const countOpinion: Shape<Opinion> = groupShape({
  low: numberShape,
  high: maybe(numberShape),
  citation: citationShape,
}) as unknown as Shape<Opinion>;

const gapShape = groupShape({ policy: choiceShape(gapPolicies), gap: maybe(bandShape("length")), opinions: listShape(lengthOpinion) });

const cutFields = {
  shaft: quantityField("length", "Diameter of the worn sleeve or shaft under the packing."),
  bore: optional(quantityField("length", "Bore of the box; it counts before the section.")),
  section: optional(quantityField("length", "Thickness of the packing, when the bore is not given.")),
  cut: choiceField(cuts, "Square across, or slanting."),
  angle: optional(quantityField("angle", "Between the cut face and the strip: 90° is square.")),
  shaftUncertainty: optional(quantityField("length", "Standard uncertainty of the shaft.")),
  boreUncertainty: optional(quantityField("length", "Standard uncertainty of the bore.")),
};

const ringMembers = { section: length, length: lengthShape, cutLength: length, bevel: length, angle: quantityShape("angle") };

const partShape = groupShape({
  kind: choiceShape(partKinds),
  number: maybe(countShape),
  from: length,
  to: length,
  height: length,
  depthLeft: maybe(length),
  joint: maybe(numberShape),
});

export const ringsAnswers: readonly AnyAnswer[] = [
  answer({
    name: "ring-cut",
    about: "How long to cut a ring, what to cut it on, and whether its ends should meet.",
    question: groupField({ ...cutFields, family: optional(choiceField(families, "What the packing is made of.")) }),
    answer: groupShape({
      ...ringMembers,
      angleFromSquare: quantityShape("angle"),
      cutLengthIfFromSquare: maybe(length),
      mandrel: length,
      lengthRounded: length,
      cutLengthRounded: length,
      lengthRoundedInch: length,
      cutLengthRoundedInch: length,
      shortcutError: length,
      gap: gapShape,
      cutLengthLessGap: maybe(length),
    }),
    work: (question, facts) => ringCut(question, facts.rings),
  }),
  answer({
    name: "butt-gap",
    about: "Whether the ends of a ring meet or stand apart, by what it is made of.",
    question: groupField({ family: optional(choiceField(families)) }),
    answer: gapShape,
    work: (question, facts) => buttGap(question, facts.rings),
  }),
  answer({
    name: "coil",
    about: "How much strip to take from the coil for a set of rings.",
    question: groupField({
      ...cutFields,
      rings: countField({ min: 1, max: 1000 }),
      trim: optional(quantityField("length", "Lost to trim on each ring.")),
    }),
    answer: groupShape({ length, lengthRounded: length, trim: length, ringLength: length, cutLength: length }),
    work: coil,
  }),
  answer({
    name: "joints",
    about: "Where each joint goes, seen facing the follower from the air side, 12 at the box's datum.",
    question: groupField({
      rings: countField({ min: 1, max: 100 }),
      first: optional(numberField({ min: 1, max: 12 }, "Clock hour of the first joint, at the throat.")),
      step: optional(numberField({ min: 3, max: 6 }, "Hours from one joint to the next: 3 is 90°.")),
    }),
    answer: groupShape({ joints: listShape(numberShape) }),
    work: joints,
  }),
  answer({
    name: "ring-set",
    about: "The rings of a box from throat to gland, with lantern ring, entry, travel and joints, from whatever could be measured.",
    question: groupField({
      motion: choiceField(motions, "How the shaft moves."),
      shaft: optional(quantityField("length", "Diameter of the worn sleeve or shaft under the packing.")),
      bore: optional(quantityField("length")),
      section: optional(quantityField("length", "Stock section chosen.")),
      depth: optional(quantityField("length", "Box face to throat shoulder.")),
      throatBush: optional(quantityField("length", "Length of a loose throat bush within that depth.")),
      spacer: optional(quantityField("length", "Length of a spacer at the bottom.")),
      rings: optional(countField({ min: 1, max: 40 }, "Number of rings, when it is settled.")),
      seating: optional(choiceField(seatings, "How hard the rings are seated.")),
      seatingLossLow: optional(numberField({}, "Part of its height that a ring loses in seating, at least.")),
      seatingLossHigh: optional(numberField({}, "Part of its height that a ring loses in seating, at most.")),
      ringHeight: optional(quantityField("length", "Height of one seated ring, when found on the job.")),
      endRings: optional(choiceField(endRings, "Rings against extrusion.")),
      lantern: optional(
        groupField({
          wanted: optional(yesNoField()),
          width: optional(quantityField("length")),
          window: optional(quantityField("length", "Opening between the lands.")),
          land: optional(quantityField("length", "Width of one land, when the window is not given.")),
          ringsThroatSide: optional(countField({ min: 0, max: 40 }, "Rings between throat and lantern ring, when settled.")),
        }),
      ),
      portFromThroat: optional(quantityField("length", "Throat to the middle of the flush port.")),
      portFromFace: optional(quantityField("length", "Box face to the middle of the flush port.")),
      portDiameter: optional(quantityField("length")),
      noseLength: optional(quantityField("length", "Length of the follower that can go into the box.")),
      glandGap: optional(quantityField("length", "Follower flange to box face at finger-tight on this set.")),
      threadLeft: optional(quantityField("length", "Thread that the nuts can still run down, at finger-tight.")),
      leastEntry: optional(quantityField("length", "Least follower entry wanted.")),
      pressure: optional(quantityField("pressure", "Pressure in the box.")),
      stroke: optional(quantityField("length", "Stroke of a rod or plunger.")),
      firstJoint: optional(numberField({ min: 1, max: 12 })),
      jointStep: optional(numberField({ min: 3, max: 6 })),
    }),
    answer: groupShape({
      rings: listShape(partShape),
      parts: listShape(partShape),
      section: length,
      ringHeight: uncertainShape("length"),
      setHeight: length,
      fit: maybe(countShape),
      spacer: maybe(length),
      lantern: maybe(
        groupShape({
          afterRing: countShape,
          from: length,
          to: length,
          centre: length,
          width: length,
          window: length,
          limit: maybe(groupShape(limitMembers)),
        }),
      ),
      entry: maybe(uncertainShape("length")),
      entryBand: maybe(bandShape("length")),
      glandGap: maybe(length),
      travel: maybe(length),
      binding: maybe(choiceShape(bindings)),
      limits: listShape(groupShape({ by: choiceShape(bindings), travel: length })),
      joints: listShape(numberShape),
      depthInSections: maybe(numberShape),
      opinions: listShape(countOpinion),
      restsOn: listShape(textShape),
      notKnown: listShape(textShape),
    }),
    work: (question, facts) => ringSet(question, facts.rings),
  }),
];
