import { seatings } from "@ringwright/core/cautions";
import { runInPlan, stopActions } from "@ringwright/core/run-in";
import { siUnits } from "@ringwright/core/units";
import { type AnyAnswer, answer } from "../answer.ts";
import { caseFields } from "../case-fields.ts";
import { groupField, numberField, optional, quantityField } from "../field.ts";
import {
  choiceShape,
  citationShape,
  countShape,
  groupShape,
  listShape,
  maybe,
  numberBandShape,
  quantityShape,
  textShape,
} from "../shape.ts";
import { openBandShape, saysShape, stepShape } from "../step-shape.ts";

const wait = openBandShape(siUnits.time);
const plain = openBandShape("1");

export const runInAnswers: readonly AnyAnswer[] = [
  answer({
    name: "run-in-plan",
    about: "How the box is closed, started, run in and looked at again, with waits, moves, stop rules and the spread of the sources.",
    question: groupField({
      ...caseFields,
      dripLow: optional(numberField({}, "Drops a minute that the site aims for; only for a turning shaft, never zero.")),
      dripHigh: optional(numberField({}, "Drops a minute.")),
      temperatureLimit: optional(quantityField("temperature", "Lowest limit of packing, flush and product at this box.")),
      torque: optional(quantityField("torque", "Of each nut of a stem's gland.")),
    }),
    answer: groupShape({
      film: choiceShape(["product", "flush", "grease", "none"]),
      seating: choiceShape(seatings),
      steps: listShape(stepShape),
      stopRules: listShape(
        groupShape({ id: textShape, does: choiceShape(stopActions), says: saysShape, citations: listShape(citationShape) }),
      ),
      spread: groupShape({
        firstWait: maybe(wait),
        step: maybe(plain),
        interval: maybe(wait),
        schedules: listShape(
          groupShape({
            id: textShape,
            firstWait: maybe(wait),
            step: maybe(plain),
            interval: maybe(wait),
            back: maybe(plain),
            rounds: maybe(countShape),
            end: textShape,
            drip: maybe(openBandShape("1/min")),
            citation: citationShape,
          }),
        ),
      }),
      aim: maybe(numberBandShape),
      holdAt: maybe(quantityShape("temperature")),
    }),
    work: (question, facts) => runInPlan(question, facts.runIn, facts.fit, facts.cautions),
  }),
];
