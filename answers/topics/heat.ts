import {
  boxMaterials,
  flushFlow,
  frictionPower,
  growingPackings,
  heatSplit,
  pressureSpeed,
  shaftMaterials,
  surfaceSpeed,
  thermalGrowth,
} from "@ringwright/core/heat";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, numberField, optional, quantityField } from "../field.ts";
import { bandShape, choiceShape, groupShape, maybe, numberBandShape, numberShape, quantityShape } from "../shape.ts";

/** What carries the heat: water unless its density and heat capacity are given. */
const liquid = {
  temperature: quantityField("temperature", "Of the liquid as it comes in."),
  boxPressureGauge: optional(quantityField("pressure", "Where it warms; left out, atmospheric.")),
  atmosphereAbsolute: optional(quantityField("absolute-pressure")),
  density: optional(quantityField("density", "Of another liquid than water.")),
  heatCapacity: optional(quantityField("heat-capacity", "Of another liquid than water.")),
};

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
    name: "flush-flow",
    about: "Flush that carries a power away for a chosen rise in its temperature. For a flush, never for a drip.",
    question: groupField({ power: quantityField("power"), rise: quantityField("temperature-difference"), ...liquid }),
    answer: groupShape({ flow: quantityShape("flow"), outletTemperature: quantityShape("temperature") }),
    work: flushFlow,
  }),
  answer({
    name: "heat-split",
    about: "Where the friction heat goes, with the drip or through the metal, and whether the drip matters as a coolant.",
    question: groupField({
      power: quantityField("power"),
      drip: quantityField("flow", "As observed."),
      rise: quantityField("temperature-difference", "By how much the drip may come out warmer than the liquid in the box."),
      shaft: quantityField("length"),
      shaftMaterial: optional(choiceField(shaftMaterials)),
      wallConductance: optional(quantityField("conductance", "Shaft and box together, where it is known.")),
      ...liquid,
    }),
    answer: groupShape({
      dripCarries: choiceShape(["little", "part", "most"]),
      dripPower: quantityShape("power"),
      dripShareAtRise: maybe(numberShape),
      restPower: quantityShape("power"),
      adiabaticRise: maybe(quantityShape("temperature-difference")),
      conductance: bandShape("conductance"),
      dripShare: numberBandShape,
      packingRise: bandShape("temperature-difference"),
    }),
    work: heatSplit,
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
