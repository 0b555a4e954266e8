import { motions } from "@ringwright/core/box";
import {
  bolt,
  glandLoad,
  moreRings,
  movements,
  nutConditions,
  nutFactor,
  proofLoadBases,
  sealStress,
  seatings,
  shortening,
  stressAlongBox,
  stressFromTorque,
  stressRatio,
  studLimit,
} from "@ringwright/core/gland";
import { type AnyAnswer, answer } from "../answer.ts";
import {
  choiceField,
  countField,
  designationField,
  groupField,
  listField,
  numberField,
  optional,
  quantityField,
  textField,
  yesNoField,
} from "../field.ts";
import { bandShape, choiceShape, countShape, groupShape, listShape, maybe, numberShape, quantityShape, textShape } from "../shape.ts";

const part = {
  height: quantityField("length"),
  ratio: numberField({}, "Radial over axial stress, K; 0 for lantern ring, spacer and bush."),
  frictionShaft: numberField({}, "Coefficient of friction on the shaft."),
  frictionBore: numberField({}, "Coefficient of friction on the bore."),
};
const parts = listField(groupField(part), { min: 1, max: 100 }, "From gland to throat.");
const turning = yesNoField("Whether the shaft turns, so that its friction points around.");
const thread = textField("M12, M12x1.25, 1/2-13, 5/8-11 UNC.", 60);
const nutFactorFields = {
  nutFactor: optional(numberField({}, "K in torque = K times load times thread diameter.")),
  nutCondition: optional(choiceField(nutConditions, "Instead of a nut factor.")),
};
const propertyClass = optional(designationField("As marked: 8.8, A2-70, B7; unknown counts as the lowest.", 40));

export const glandAnswers: readonly AnyAnswer[] = [
  answer({
    name: "stress-along-box",
    about: "What one further push on the gland does along the box, or what is left after slackening it.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      glandStress: quantityField("stress"),
      parts,
      turning,
      movement: optional(choiceField(movements, "Which way the follower last moved; push when not said.")),
      glandStressBefore: optional(quantityField("stress", "For slackening: the gland stress before it.")),
      seating: optional(choiceField(seatings, "How the rings were put in.")),
      radial: optional(yesNoField("Whether the stress on the walls is wanted too.")),
    }),
    answer: groupShape({
      profile: listShape(groupShape({ depth: quantityShape("length"), axial: quantityShape("stress") })),
      atBottom: quantityShape("stress"),
      share: maybe(numberShape),
      mean: quantityShape("stress"),
      radial: maybe(
        listShape(
          groupShape({
            part: countShape,
            from: quantityShape("length"),
            to: quantityShape("length"),
            glandSide: quantityShape("stress"),
            throatSide: quantityShape("stress"),
          }),
        ),
      ),
    }),
    work: stressAlongBox,
  }),
  answer({
    name: "part-shortening",
    about: "How much each part gives under one further push, and how much of the follower's movement reaches it.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      glandStress: quantityField("stress"),
      parts: listField(
        groupField({ ...part, modulus: optional(quantityField("stress", "Left out for what does not give.")) }),
        { min: 1, max: 100 },
        "From gland to throat.",
      ),
      turning,
    }),
    answer: groupShape({ parts: listShape(quantityShape("length")), total: quantityShape("length"), carried: listShape(numberShape) }),
    work: shortening,
  }),
  answer({
    name: "more-rings",
    about: "What another count of rings does to the stress at the bottom.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      rings: countField({ min: 1, max: 100 }),
      otherRings: optional(countField({ min: 1, max: 101 }, "One more when not said.")),
      ringHeight: quantityField("length"),
      ratio: part.ratio,
      frictionShaft: part.frictionShaft,
      frictionBore: part.frictionBore,
      turning: optional(turning),
    }),
    answer: groupShape({ share: numberShape, otherRings: countShape, otherShare: numberShape, needed: numberShape }),
    work: moreRings,
  }),
  answer({
    name: "seal-stress",
    about: "Gland stress at which the packing presses as hard as the pressure: at the first ring, and at the last.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      pressure: quantityField("pressure"),
      parts,
      turning: optional(turning),
      motion: choiceField(motions),
    }),
    answer: groupShape({ lower: quantityShape("stress"), upper: quantityShape("stress") }),
    work: sealStress,
  }),
  answer({
    name: "gland-load",
    about: "What a gland stress asks of the nuts, and what one flat of a nut does.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      glandStress: quantityField("stress"),
      nuts: countField({ min: 1, max: 48 }),
      thread,
      ...nutFactorFields,
      boxPressure: optional(quantityField("pressure", "Pushes the set out.")),
      ringsHeight: optional(quantityField("length", "All rings together, for the share of it that one flat takes.")),
      motion: optional(choiceField(motions)),
    }),
    answer: groupShape({
      force: quantityShape("force"),
      pushOut: quantityShape("force"),
      perNut: quantityShape("force"),
      perNutBand: bandShape("force"),
      torque: quantityShape("torque"),
      advancePerFlat: quantityShape("length"),
      sharePerFlat: maybe(numberShape),
    }),
    work: (question, facts) => glandLoad(question, facts.gland),
  }),
  answer({
    name: "stress-from-torque",
    about: "What a torque on each nut makes of gland stress, as a band.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      nuts: countField({ min: 1, max: 48 }),
      thread,
      torque: quantityField("torque"),
      ...nutFactorFields,
      boxPressure: optional(quantityField("pressure")),
    }),
    answer: groupShape({ perNut: quantityShape("force"), glandStress: quantityShape("stress"), glandStressBand: bandShape("stress") }),
    work: (question, facts) => stressFromTorque(question, facts.gland),
  }),
  answer({
    name: "bolt",
    about: "What a gland stud is by its thread and can carry by its class.",
    question: groupField({ thread, propertyClass }),
    answer: groupShape({
      thread: textShape,
      propertyClass: textShape,
      pitch: quantityShape("length"),
      stressArea: quantityShape("area"),
      proofStress: quantityShape("stress"),
      proofLoad: quantityShape("force"),
      basis: choiceShape(proofLoadBases),
    }),
    work: (question, facts) => bolt(question, facts.gland),
  }),
  answer({
    name: "nut-factor",
    about: "The nut factor that friction under thread and nut face makes.",
    question: groupField({
      thread,
      frictionThread: numberField({}, "Coefficient of friction in the thread."),
      frictionFace: numberField({}, "Coefficient of friction under the nut."),
      faceDiameter: quantityField("length", "Mean diameter of the ring on which the nut rubs."),
    }),
    answer: groupShape({ nutFactor: numberShape, torquePerLoad: quantityShape("length") }),
    work: (question, facts) => nutFactor(question, facts.gland),
  }),
  answer({
    name: "stud-limit",
    about: "The most a stud may be pulled while it is turned: pull and twist together.",
    question: groupField({
      thread,
      propertyClass,
      frictionThread: numberField({}, "Coefficient of friction in the thread."),
      useOfYield: numberField({}, "Share of the 0.2 % stress that may be used; 0.9 is usual."),
    }),
    answer: groupShape({ load: quantityShape("force") }),
    work: (question, facts) => studLimit(question, facts.gland),
  }),
  answer({
    name: "stress-ratio",
    about: "Radial over axial stress of a solid filler by its Poisson's ratio; braids give less.",
    question: groupField({ poissonRatio: numberField() }),
    answer: groupShape({ ratio: numberShape }),
    work: stressRatio,
  }),
];
