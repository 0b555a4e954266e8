import { hows, measured, plausibleFields } from "@ringwright/core/uncertainty";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, listField, optional, quantityField } from "../field.ts";
import { countShape, groupShape, maybe, quantityShape, uncertainShape } from "../shape.ts";

const readings = listField(quantityField("length"), { min: 1, max: 200 }, "One dimension, read several times or in several places.");

export const measuredAnswers: readonly AnyAnswer[] = [
  answer({
    name: "measured",
    about: "One dimension from several readings: mean, spread, standard uncertainty, out-of-round and taper.",
    question: groupField({
      readings: optional(readings),
      planes: optional(
        listField(
          listField(quantityField("length"), { min: 1, max: 50 }),
          { min: 1, max: 20 },
          "Instead of readings: one list a plane, from the throat to the gland, each with its directions.",
        ),
      ),
      resolution: optional(quantityField("length", "Smallest step read off; left out, the usual one for how it was taken.")),
      how: optional(choiceField(hows, "How it was taken. Left out with a resolution given, nothing is added for it.")),
      field: optional(choiceField(plausibleFields, "Which dimension it is, so that a mistyped one can be asked about.")),
    }),
    answer: groupShape({
      mean: uncertainShape("length"),
      standardUncertainty: quantityShape("length"),
      spread: quantityShape("length"),
      expanded: quantityShape("length"),
      count: countShape,
      outOfRound: maybe(quantityShape("length")),
      taper: maybe(quantityShape("length")),
    }),
    work: (question, facts) => measured(question, facts.uncertainty),
  }),
];
