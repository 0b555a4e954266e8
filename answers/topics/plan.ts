import { type PartName, type Plan, partNames, partsOf, plan } from "@ringwright/core/plan";
import { say } from "@ringwright/words";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceShape, groupShape, listShape, numberShape, quantityShape, type Shape, textShape } from "../shape.ts";
import { cautionsAnswers } from "./cautions.ts";
import { conditionAnswers } from "./condition.ts";
import { fitAnswers } from "./fit.ts";
import { flushAnswers } from "./flush.ts";
import { glandAnswers } from "./gland.ts";
import { heatAnswers } from "./heat.ts";
import { lanternAnswers } from "./lantern.ts";
import { leakAnswers } from "./leak.ts";
import { materialsAnswers } from "./materials.ts";
import { measuredAnswers } from "./measured.ts";
import { ringsAnswers } from "./rings.ts";
import { runInAnswers } from "./run-in.ts";
import { sectionAnswers } from "./section.ts";
import { stemsAnswers } from "./stems.ts";
import { surveyField } from "./survey-field.ts";

/** The answer whose reply each part of the plan is written as. */
const writtenAs: Readonly<Partial<Record<PartName, string>>> = {
  shaft: "measured",
  bore: "measured",
  depth: "measured",
  "stress-standing": "stress-along-box",
  "stress-turning": "stress-along-box",
};

const described = [
  measuredAnswers,
  conditionAnswers,
  sectionAnswers,
  flushAnswers,
  heatAnswers,
  materialsAnswers,
  ringsAnswers,
  glandAnswers,
  stemsAnswers,
  leakAnswers,
  lanternAnswers,
  cautionsAnswers,
  fitAnswers,
  runInAnswers,
].flat();

const ownShapes: Readonly<Partial<Record<PartName, Shape<never>>>> = {
  material: groupShape({ style: textShape, family: textShape }) as unknown as Shape<never>,
  settings: groupShape({ ratio: numberShape, friction: numberShape, glandStress: quantityShape("stress") }) as unknown as Shape<never>,
};

const partShapes: readonly (readonly [PartName, Shape<never>])[] = partNames.map((name) => {
  const own = ownShapes[name] ?? described.find((entry) => entry.name === (writtenAs[name] ?? name))?.answer;
  if (!own) throw new Error(`no answer says how ${name} is written`);
  return [name, own];
});

const gapShape = groupShape({ field: textShape, parts: listShape(choiceShape(partNames)) });
const refusalShape: Shape<Plan["refused"][number]> = {
  schema: {
    type: "object",
    properties: {
      part: { enum: partNames },
      kind: { type: "string" },
      input: { type: "string" },
      given: true,
      allowed: true,
      why: { type: "string" },
    },
    required: ["part", "kind", "input", "why"],
    additionalProperties: false,
  },
  write: ({ part, refusal: { says, citation: _, ...refusal } }) => ({
    part,
    ...(refusal as { kind: string; input: string }),
    why: say(says),
  }),
};

const planShape: Shape<Plan> = {
  schema: {
    type: "object",
    properties: {
      name: { type: "string" },
      place: { type: "string" },
      parts: {
        type: "object",
        properties: Object.fromEntries(partShapes.map(([name, shape]) => [name, shape.schema])),
        additionalProperties: false,
      },
      gaps: { type: "array", items: gapShape.schema },
      refused: { type: "array", items: refusalShape.schema },
    },
    required: ["parts", "gaps", "refused"],
    additionalProperties: false,
  },
  write(found) {
    const parts = partsOf(found);
    return {
      ...(found.survey.name === undefined ? {} : { name: found.survey.name }),
      ...(found.survey.place === undefined ? {} : { place: found.survey.place }),
      parts: Object.fromEntries(
        partShapes.flatMap(([name, shape]) => {
          const part = parts[name];
          return part?.ok ? [[name, shape.write(part.value as never)]] : [];
        }),
      ),
      gaps: found.gaps.map((gap) => gapShape.write(gap)),
      refused: found.refused.map((entry) => refusalShape.write(entry)),
    };
  },
};

export const planAnswers: readonly AnyAnswer[] = [
  answer({
    name: "plan",
    about: "The whole plan for packing one box, from whatever was measured of it.",
    question: surveyField,
    answer: planShape,
    work: plan,
  }),
];
