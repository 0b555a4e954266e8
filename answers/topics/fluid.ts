import { water } from "@ringwright/core/fluid";
import { type AnyAnswer, answer } from "../answer.ts";
import { groupField, quantityField } from "../field.ts";
import { choiceShape, groupShape, maybe, quantityShape } from "../shape.ts";

export const fluidAnswers: readonly AnyAnswer[] = [
  answer({
    name: "water",
    about: "Density, viscosity, heat capacity and boiling of water or steam at a temperature and an absolute pressure.",
    question: groupField({
      temperature: quantityField("temperature"),
      pressure: quantityField("absolute-pressure", "Absolute: above vacuum, not above the atmosphere."),
    }),
    answer: groupShape({
      phase: choiceShape(["liquid", "steam"]),
      density: quantityShape("density"),
      viscosity: quantityShape("viscosity"),
      heatCapacity: quantityShape("heat-capacity"),
      saturationPressure: maybe(quantityShape("absolute-pressure")),
      saturationTemperature: maybe(quantityShape("temperature")),
      kinematicViscosity: maybe(quantityShape("kinematic-viscosity")),
      surfaceTension: maybe(quantityShape("surface-tension")),
    }),
    work: water,
  }),
];
