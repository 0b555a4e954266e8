import { boxMaterials, frictionPower, growingPackings, pressureSpeed, surfaceSpeed, thermalGrowth } from "@ringwright/core/heat";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, numberField, optional, quantityField } from "../field.ts";
import { bandShape, groupShape, maybe, numberShape, quantityShape } from "../shape.ts";

export const heatAnswers: readonly AnyAnswer[] = [
  answer({
    name: "surface-speed",
    about: "How fast the shaft surface runs under the packing.",
    question: groupField({ shaft: quantityField("length"), rotation: quantityField("rotation") }),
    answer: groupShape({ speed: quantityShape("speed") }),
    work: surfaceSpeed,
  }),
  answer({
    name: "friction-power",
    about: "What the packing takes from a turning shaft: Coulomb torque, and power between the bounds of a full film and dry rubbing.",
    question: groupField({
      shaft: quantityField("length"),
      bore: quantityField("length"),
      packedLength: quantityField("length"),
      glandStress: quantityField("stress"),
      ratio: optional(numberField({}, "Radial over axial stress.")),
      frictionBore: optional(numberField({}, "Friction of the packing on the bore, standing.")),
      frictionRunning: optional(numberField({}, "Friction of the packing on the turning shaft.")),
      rotation: quantityField("rotation"),
      clearance: optional(quantityField("length", "Film between packing and shaft; a measured leak gives it.")),
      viscosity: optional(quantityField("viscosity", "Of what is in that film.")),
    }),
    answer: groupShape({
      torque: quantityShape("torque"),
      band: bandShape("power"),
      coulomb: quantityShape("power"),
      film: maybe(quantityShape("power")),
      frictionForce: quantityShape("force"),
      speed: quantityShape("speed"),
    }),
    work: frictionPower,
  }),
  answer({
    name: "thermal-growth",
    about: "How much a packing set grows along the shaft when it warms, as a length and in flats of the gland nuts.",
    question: groupField({
      packing: choiceField(growingPackings),
      packedLength: quantityField("length"),
      from: quantityField("temperature"),
      to: quantityField("temperature"),
      boxMaterial: optional(choiceField(boxMaterials)),
      poisson: optional(numberField({}, "Poisson's ratio of the packing.")),
      pitch: optional(quantityField("length", "Thread pitch of the gland studs.")),
    }),
    answer: groupShape({
      strain: numberShape,
      volumeStrain: numberShape,
      free: quantityShape("length"),
      confined: maybe(quantityShape("length")),
      freeFlats: maybe(numberShape),
      confinedFlats: maybe(numberShape),
    }),
    work: (question, facts) => thermalGrowth(question, facts.heat),
  }),
  answer({
    name: "pressure-speed",
    about: "Box pressure times surface speed, for information only.",
    question: groupField({ boxPressureGauge: quantityField("pressure"), speed: quantityField("speed") }),
    answer: groupShape({ pressureSpeed: quantityShape("pressure-speed") }),
    work: pressureSpeed,
  }),
];
