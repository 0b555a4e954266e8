import { nutConditions, seatings } from "@ringwright/core/gland";
import { rodServices, rodSet } from "@ringwright/core/rods";
import { stemFriction, stemGovernors, stemLoad, stemSets } from "@ringwright/core/stems";
import { type AnyAnswer, answer } from "../answer.ts";
import {
  choiceField,
  countField,
  designationField,
  groupField,
  numberField,
  optional,
  quantityField,
  textField,
  yesNoField,
} from "../field.ts";
import { bandShape, choiceShape, groupShape, maybe, numberShape, quantityShape, yesNoShape } from "../shape.ts";

const ratio = optional(numberField({}, "Radial over axial stress; 0.5 when not said."));
const seating = optional(choiceField(seatings, "How the rings were put in."));

export const stemsAnswers: readonly AnyAnswer[] = [
  answer({
    name: "stem-load",
    about: "What a valve stem set asks: gland stress, torque per nut, stem friction, and how much of the stud that uses.",
    question: groupField({
      stem: quantityField("length"),
      bore: quantityField("length"),
      pressure: quantityField("pressure"),
      floorStress: optional(quantityField("stress", "Least gland stress, from the set's own sheet. No default: give it, or name the set.")),
      timesPressure: optional(numberField({}, "Least gland stress over line pressure. No default: give it, or name the set.")),
      set: optional(choiceField(stemSets, "A set whose printed load stands in for the two above.")),
      nuts: countField({ min: 1, max: 48 }),
      thread: textField("M12, M12x1.25, 1/2-13, 5/8-11 UNC.", 60),
      nutFactor: optional(numberField({}, "K in torque = K times load times thread diameter.")),
      nutCondition: optional(choiceField(nutConditions, "Instead of a nut factor.")),
      propertyClass: optional(designationField("As marked: 8.8, A2-70, B7; unknown counts as the lowest.", 40)),
      packedLength: quantityField("length"),
      friction: numberField({}, "Coefficient of friction of packing on stem."),
      ratio,
      seating,
    }),
    answer: groupShape({
      glandStress: quantityShape("stress"),
      governs: choiceShape(stemGovernors),
      force: quantityShape("force"),
      perNut: quantityShape("force"),
      perNutBand: bandShape("force"),
      torque: quantityShape("torque"),
      advancePerFlat: quantityShape("length"),
      stemFriction: quantityShape("force"),
      frictionBand: bandShape("force"),
      rejectionLoad: quantityShape("force"),
      proofLoad: quantityShape("force"),
      studUse: numberShape,
      studUseHigh: numberShape,
      loadLeft: bandShape("stress"),
    }),
    work: (question, facts) => stemLoad(question, facts.stems, facts.gland),
  }),
  answer({
    name: "stem-friction",
    about: "Force to slide a stem through its packing.",
    question: groupField({
      stem: quantityField("length"),
      bore: quantityField("length"),
      packedLength: quantityField("length"),
      glandStress: quantityField("stress"),
      friction: numberField({}, "Coefficient of friction of packing on stem."),
      ratio,
      seating,
    }),
    answer: groupShape({ stemFriction: quantityShape("force"), frictionBand: bandShape("force") }),
    work: stemFriction,
  }),
  answer({
    name: "rod-set",
    about: "The set of a plunger or rod that strokes: height against section and stroke, wear of the rod, force to slide it.",
    question: groupField({
      rod: quantityField("length", "Its size when new."),
      rodSmallest: optional(quantityField("length", "The smallest diameter found along the stroke.")),
      bore: quantityField("length"),
      stroke: quantityField("length"),
      rings: countField({ min: 1, max: 40 }),
      ringHeight: optional(quantityField("length", "Of one seated ring; the section when not said.")),
      lanternHeight: optional(quantityField("length")),
      lubricated: yesNoField("Whether a lubricator or flush feeds the set."),
      service: choiceField(rodServices),
      pressure: optional(quantityField("pressure")),
      glandStress: optional(quantityField("stress")),
      ratio: optional(numberField({}, "Radial over axial stress.")),
      frictionRunning: optional(numberField({}, "Friction of packing on the moving rod.")),
      frictionBore: optional(numberField({}, "Friction of packing on the bore.")),
    }),
    answer: groupShape({
      section: quantityShape("length"),
      stackHeight: quantityShape("length"),
      sections: numberShape,
      stackOverStroke: numberShape,
      withinStroke: yesNoShape,
      undersize: maybe(quantityShape("length")),
      undersizeLimit: maybe(quantityShape("length")),
      friction: maybe(quantityShape("force")),
      warmth: quantityShape("temperature-difference"),
    }),
    work: (question, facts) => rodSet(question, facts.rods),
  }),
];
