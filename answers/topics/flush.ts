import { boxDesigns, boxPressure, impellerDiameters } from "@ringwright/core/flush";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, optional, quantityField } from "../field.ts";
import { bandShape, choiceShape, groupShape, listShape, maybe, numberShape, quantityShape, textShape } from "../shape.ts";

export const flushAnswers: readonly AnyAnswer[] = [
  answer({
    name: "box-pressure",
    about: "The pressure at the bottom of the box: by a gauge at the flush tee, else as a band by the design of the pump.",
    question: groupField({
      suction: quantityField("pressure"),
      discharge: quantityField("pressure"),
      design: choiceField(boxDesigns),
      impellerDiameter: optional(
        choiceField(impellerDiameters, "For back vanes: whether the impeller is the largest or smallest that fits."),
      ),
      measuredGauge: optional(quantityField("pressure", "A gauge at the flush tee; it wins over the design.")),
      gaugeError: optional(quantityField("pressure-difference", "How far that gauge may be off.")),
    }),
    answer: groupShape({
      band: bandShape("pressure"),
      typical: quantityShape("pressure"),
      basis: choiceShape(["gauge", "design"]),
      byDesign: maybe(bandShape("pressure")),
      published: listShape(groupShape({ source: textShape, pressure: quantityShape("pressure"), factor: maybe(numberShape) })),
    }),
    work: (question, facts) => boxPressure(question, facts.flush.boxPressure),
  }),
];
