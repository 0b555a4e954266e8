import { fits, section, sectionOpinions, stockSeries } from "@ringwright/core/section";
import { hows } from "@ringwright/core/uncertainty";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, listField, numberField, optional, quantityField, yesNoField } from "../field.ts";
import { bandShape, choiceShape, groupShape, listShape, maybe, numberShape, quantityShape, textShape, uncertainShape } from "../shape.ts";

const readings = (about: string) => optional(listField(quantityField("length"), { min: 1, max: 200 }, about));

export const sectionAnswers: readonly AnyAnswer[] = [
  answer({
    name: "section",
    about: "The gap the packing has to fill, how sure it is, and which stock sizes fill it.",
    question: groupField({
      shaft: quantityField("length", "Of the worn sleeve or shaft, where the packing runs. Never off the nameplate."),
      bore: quantityField("length", "Of the box as it is worn, where the packing sits."),
      shaftReadings: readings("Used instead of the single value."),
      boreReadings: readings("Used instead of the single value."),
      resolution: optional(quantityField("length", "Smallest step read off; left out, the usual one for how it was taken.")),
      how: optional(choiceField(hows, "How both were taken.")),
      shaftHow: optional(choiceField(hows, "How the shaft was taken, where it differs.")),
      boreHow: optional(choiceField(hows, "How the bore was taken, where it differs.")),
      series: optional(choiceField(stockSeries, "Which stock may be bought; both when left out.")),
      braidTolerance: optional(numberField({}, "Half-width of the section as braided, as a share of it: 0.04 is 4 %.")),
      preformed: optional(yesNoField("Die-formed rings, which are not rolled.")),
      nameplateSection: optional(quantityField("length", "What nameplate or drawing says; compared, never used.")),
    }),
    answer: groupShape({
      section: uncertainShape("length"),
      shaft: uncertainShape("length"),
      bore: uncertainShape("length"),
      series: choiceShape(stockSeries),
      braidTolerance: numberShape,
      stock: listShape(
        groupShape({
          size: quantityShape("length"),
          label: textShape,
          series: listShape(choiceShape(["metric", "inch"])),
          misfit: quantityShape("length"),
          probability: numberShape,
          fills: numberShape,
          fit: choiceShape(fits),
          advice: textShape,
        }),
      ),
      choice: listShape(quantityShape("length")),
      advice: listShape(textShape),
    }),
    work: (question, facts) => section(question, facts.section.stock, facts.uncertainty),
  }),
  answer({
    name: "section-opinions",
    about: "What published tables would choose for this shaft. The box decides, not the table.",
    question: groupField({ shaft: quantityField("length"), section: optional(quantityField("length")) }),
    answer: groupShape({
      opinions: listShape(groupShape({ id: textShape, section: bandShape("length") })),
      silent: listShape(textShape),
      ratio: maybe(numberShape),
    }),
    work: (question, facts) => sectionOpinions(question, facts.section.tables),
  }),
];
