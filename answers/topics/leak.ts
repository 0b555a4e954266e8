import { motions, releases } from "@ringwright/core/box";
import {
  annularLeak,
  clearanceFromLeak,
  dripFilms,
  dripGuideline,
  dripMaterials,
  dripServices,
  dripStages,
  dripVerdicts,
  drops,
  dropsFromFlow,
  dropVolume,
  leakPlaces,
  leakWhatIf,
  shaftStates,
} from "@ringwright/core/leak";
import { nameOf } from "@ringwright/words";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, numberField, optional, quantityField, yesNoField } from "../field.ts";
import {
  bandShape,
  choiceShape,
  citationShape,
  groupShape,
  listShape,
  maybe,
  numberBandShape,
  numberShape,
  quantityShape,
  type Shape,
  textShape,
  uncertainShape,
  yesNoShape,
} from "../shape.ts";

const eccentricity = numberField({}, "Offset of the shaft over the clearance: 0 centred, 1 touching.");
const density = optional(quantityField("density", "For the Reynolds number; water at 20 °C when left out."));
const measuredDrop = optional(quantityField("volume", "Of one drop, as found from a catch; 0.05 mL when left out."));

const annulus = {
  diameter: quantityField("length", "Of the shaft or sleeve."),
  length: quantityField("length", "Of the rings that hold the pressure drop; with the flush on, of the gland-side rings only."),
  pressureDrop: quantityField("pressure-difference", "Over that length; with the flush on, from flush pressure to the outside."),
  viscosity: quantityField("viscosity"),
  eccentricity,
  density,
};

const observed = {
  where: optional(choiceField(leakPlaces, "Where it was seen to come out.")),
  state: optional(choiceField(shaftStates, "Whether the shaft was running.")),
  flushOn: optional(yesNoField("Whether the flush was on.")),
};

const condition = {
  pressureDrop: optional(quantityField("pressure-difference")),
  viscosity: optional(quantityField("viscosity", "Of any liquid.")),
  temperature: optional(quantityField("temperature", "Of water, where no viscosity is given.")),
  eccentricity: optional(eccentricity),
};

/** The words of a source that gives no number. */
const wordsShape: Shape<string> = { schema: { type: "string" }, write: (id) => nameOf(id) };

const advice = groupShape({
  id: textShape,
  stage: choiceShape(dripStages),
  drops: maybe(numberBandShape),
  flow: maybe(bandShape("flow")),
  saying: maybe(wordsShape),
  verdict: maybe(choiceShape(dripVerdicts)),
  citation: citationShape,
});

export const leakAnswers: readonly AnyAnswer[] = [
  answer({
    name: "annular-leak",
    about: "Leak along a shaft through a thin gap of even clearance.",
    question: groupField({ ...annulus, clearance: quantityField("length", "Gap on the radius, shaft centred.") }),
    answer: groupShape({ flow: quantityShape("flow"), reynolds: numberShape }),
    work: annularLeak,
  }),
  answer({
    name: "clearance-from-leak",
    about: "Even clearance at the shaft that an observed leak amounts to.",
    question: groupField({
      ...annulus,
      ...observed,
      flow: quantityField("flow"),
      flowBand: optional(groupField({ low: quantityField("flow"), high: quantityField("flow") }, "How far the flow may be off.")),
    }),
    answer: groupShape({
      clearance: quantityShape("length"),
      band: maybe(bandShape("length")),
      reynolds: numberShape,
      state: maybe(choiceShape(shaftStates)),
    }),
    work: clearanceFromLeak,
  }),
  answer({
    name: "leak-what-if",
    about: "What an observed leak becomes when pressure, temperature or eccentricity change and the clearance stays.",
    question: groupField({
      diameter: annulus.diameter,
      length: annulus.length,
      flow: quantityField("flow", "As observed."),
      ...condition,
      pressureDrop: annulus.pressureDrop,
      density,
      ...observed,
      changed: groupField({ ...condition, state: optional(choiceField(shaftStates)) }, "What changes; the rest stays."),
    }),
    answer: groupShape({
      flow: quantityShape("flow"),
      ratio: numberShape,
      clearance: quantityShape("length"),
      reynolds: numberShape,
    }),
    work: leakWhatIf,
  }),
  answer({
    name: "drops",
    about: "A counted drip as a flow.",
    question: groupField({ rate: numberField({}, "Drops a minute."), dropVolume: measuredDrop }),
    answer: groupShape({ flow: quantityShape("flow"), band: maybe(bandShape("flow")) }),
    work: drops,
  }),
  answer({
    name: "drops-from-flow",
    about: "A flow as the drops a minute that it would be counted as.",
    question: groupField({ flow: quantityField("flow"), dropVolume: measuredDrop }),
    answer: groupShape({ rate: numberShape, band: maybe(numberBandShape) }),
    work: dropsFromFlow,
  }),
  answer({
    name: "drop-volume",
    about: "Volume of one drop: from a catch, else from the edge it hangs from, else the usual figure with its spread.",
    question: groupField({
      drops: optional(numberField({}, "Drops counted while the leak was caught.")),
      caught: optional(quantityField("volume", "What they came to.")),
      resolution: optional(quantityField("volume", "Finest mark of the measure; 1 mL when left out.")),
      tip: optional(quantityField("length", "Wetted width of the edge that the drops hang from.")),
      surfaceTension: optional(quantityField("surface-tension")),
      density: optional(quantityField("density")),
      temperature: optional(quantityField("temperature", "Of water, where surface tension and density are left out.")),
    }),
    answer: groupShape({
      dropVolume: uncertainShape("volume"),
      band: bandShape("volume"),
      basis: choiceShape(["timed-catch", "drip-point", "assumed"]),
    }),
    work: dropVolume,
  }),
  answer({
    name: "drip-guideline",
    about:
      "Published drips of packed boxes for this shaft, service and material, each with its source, and where none at all can be in order.",
    question: groupField({
      motion: choiceField(motions),
      shaft: quantityField("length"),
      service: optional(choiceField(dripServices)),
      material: optional(choiceField(dripMaterials)),
      stage: optional(choiceField(dripStages, "Running in, settled, or at rest; settled when left out.")),
      film: optional(choiceField(dripFilms, "What keeps the packing wet.")),
      release: optional(choiceField(releases, "Whether what comes out may be let out here.")),
      boxPressure: optional(quantityField("pressure", "At the bottom of the box, gauge.")),
      dropVolume: measuredDrop,
      rate: optional(numberField({}, "Drops a minute as counted, to hold against each figure.")),
      house: optional(groupField({ low: numberField(), high: numberField() }, "The site's own limits, drops a minute.")),
    }),
    answer: groupShape({
      guidelines: listShape(advice),
      spread: maybe(numberBandShape),
      flow: maybe(bandShape("flow")),
      house: maybe(groupShape({ drops: numberBandShape, verdict: maybe(choiceShape(dripVerdicts)) })),
      zeroAllowed: yesNoShape,
      zeroBecause: maybe(choiceShape(["flexible-graphite", "grease", "vacuum"])),
    }),
    work: (question, facts) => dripGuideline(question, facts.leak.drip),
  }),
];
