import { yesNoUnknown } from "@ringwright/core/cautions";
import { bridge, fitSteps, ringDepth } from "@ringwright/core/fit";
import { type AnyAnswer, answer } from "../answer.ts";
import { caseFields } from "../case-fields.ts";
import { choiceField, countField, groupField, listField, numberField, optional, quantityField, textField } from "../field.ts";
import { choiceShape, countShape, groupShape, listShape, quantityShape, textShape } from "../shape.ts";
import { saysShape, stepShape } from "../step-shape.ts";

export const fitAnswers: readonly AnyAnswer[] = [
  answer({
    name: "fit-steps",
    about: "From kit to start for one box: one thing a step, what is foretold beside each number, cautions above it.",
    question: groupField({
      ...caseFields,
      rings: countField({ min: 1, max: 40 }, "Packing rings in the set, without the lantern ring."),
      lanternAfter: optional(countField({ min: 0, max: 40 }, "Rings between throat and lantern ring; left out when there is none.")),
      faces: optional(
        listField(quantityField("length"), { min: 1, max: 40 }, "Depth of each ring's face from the box face, once home, from the throat."),
      ),
      lanternFace: optional(quantityField("length", "Depth of the lantern ring's gland-side face, beside faces.")),
      spacerFace: optional(quantityField("length", "Depth of the face of spacer or bush at the throat, beside faces.")),
      boxDepth: optional(quantityField("length", "From the face of the box to the throat.")),
      ringHeight: optional(quantityField("length", "Height of one seated ring, along the shaft.")),
      lanternWidth: optional(quantityField("length")),
      spacer: optional(quantityField("length", "Length of a spacer at the throat.")),
      joints: optional(listField(numberField({ min: 0, max: 12 }), { min: 1, max: 40 }, "Clock hour of each joint, from the throat.")),
      cut: optional(choiceField(["butt", "skive"], "Butt for turning shafts and rods, skive for stems, when left out.")),
      mandrel: optional(quantityField("length", "Diameter of the worn sleeve, and of the bar to cut on.")),
      cutLength: optional(quantityField("length", "Tip to tip.")),
      portDepth: optional(quantityField("length", "From the face of the box to the flush port's centre.")),
      torque: optional(quantityField("torque", "Of each nut of a stem's gland.")),
      oldRingsThroatSide: optional(
        countField({ min: 0, max: 40 }, "Rings that the box record says are behind the lantern ring, or in all."),
      ),
      oldRingsGlandSide: optional(countField({ min: 0, max: 40 }, "Rings that the box record says are before the lantern ring.")),
      newShaft: optional(choiceField(yesNoUnknown, "Whether shaft or sleeve is new.")),
    }),
    answer: groupShape({
      rings: countShape,
      ringsThroatSide: countShape,
      ringsGlandSide: countShape,
      steps: listShape(stepShape),
    }),
    work: (question, facts) => fitSteps(question, facts.fit, facts.cautions),
  }),
  answer({
    name: "ring-depth",
    about: "Whether a ring came home: the depth found against the depth foretold.",
    question: groupField({
      found: quantityField("length", "Depth of the ring's face from the face of the box."),
      predicted: quantityField("length"),
      ringHeight: quantityField("length", "Of one seated ring."),
    }),
    answer: groupShape({ off: quantityShape("length"), verdict: choiceShape(["go-on", "stop"]), says: saysShape }),
    work: ringDepth,
  }),
  answer({
    name: "bridge",
    about: "A step that can't be done, as a make-do with an owner and an end date; or that there is no way past it.",
    question: groupField({
      step: textField("Id of the step.", 80),
      reason: textField("One of the step's reasons.", 80),
      owner: textField("Who sees that it ends.", 80),
      until: textField("Last day, as 2026-03-31.", 10),
      today: textField("Today, as 2026-03-01.", 10),
      ringsLeftIn: optional(countField({ min: 0, max: 40 }, "Old rings that stay in the box.")),
    }),
    answer: groupShape({ step: textShape, reason: textShape, owner: textShape, until: textShape, ringsLeftIn: countShape }),
    work: (question, facts) => bridge(question, facts.fit),
  }),
];
