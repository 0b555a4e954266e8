import { type Caution, cautions, severities } from "@ringwright/core/cautions";
import { type AnyAnswer, answer } from "../answer.ts";
import { caseFields } from "../case-fields.ts";
import { groupField } from "../field.ts";
import { choiceShape, citationShape, countShape, groupShape, listShape, type Shape, textShape } from "../shape.ts";
import { saysShape } from "../step-shape.ts";

const words = groupShape({
  id: textShape,
  order: countShape,
  severity: choiceShape(severities),
  says: saysShape,
  guards: groupShape({ inputs: listShape(textShape), groups: listShape(textShape), steps: listShape(textShape) }),
  citations: listShape(citationShape),
});

const cautionShape: Shape<Caution> = {
  schema: words.schema,
  write: (caution) => words.write({ ...caution, says: { id: caution.id } }),
};

export const cautionsAnswers: readonly AnyAnswer[] = [
  answer({
    name: "cautions",
    about: "The cautions that fit a box and its work, in reading order, each with what it stands above.",
    question: groupField(caseFields),
    answer: groupShape({
      cautions: listShape(cautionShape),
      taken: listShape(groupShape({ side: textShape, value: textShape })),
      unknown: listShape(textShape),
    }),
    work: (question, facts) => cautions(question, facts.cautions),
  }),
];
