import { surfaceSpeed } from "@ringwright/core/heat";
import { type AnyAnswer, answer } from "../answer.ts";
import { groupField, quantityField } from "../field.ts";
import { groupShape, quantityShape } from "../shape.ts";

export const heatAnswers: readonly AnyAnswer[] = [
  answer({
    name: "surface-speed",
    about: "How fast the shaft surface runs under the packing.",
    question: groupField({ shaft: quantityField("length"), rotation: quantityField("rotation") }),
    answer: groupShape({ speed: quantityShape("speed") }),
    work: surfaceSpeed,
  }),
];
