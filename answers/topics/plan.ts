import { datums, motions, releases, zones } from "@ringwright/core/box";
import { oldPackings, ringForms, seatings as seatingsBeforeStart, services, yesNoUnknown } from "@ringwright/core/cautions";
import { conditionSightings } from "@ringwright/core/condition";
import { boxDesigns, flushServices, impellerDiameters } from "@ringwright/core/flush";
import { seatings as howSeated, nutConditions } from "@ringwright/core/gland";
import { type PartName, type Plan, partNames, partsOf, plan } from "@ringwright/core/plan";
import { cuts, endRings } from "@ringwright/core/rings";
import { stockSeries } from "@ringwright/core/section";
import { hows } from "@ringwright/core/uncertainty";
import { say } from "@ringwright/words";
import { type AnyAnswer, answer } from "../answer.ts";
import {
  choiceField,
  countField,
  eitherField,
  type Field,
  groupField,
  type Json,
  listField,
  numberField,
  optional,
  quantityField,
  textField,
  yesNoField,
} from "../field.ts";
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

/** A field that may be left out, or answered "don't know"; both leave a named gap. */
function known<T>(field: Field<T>): Field<T | undefined> {
  const asked = optional(field);
  return {
    ...asked,
    schema: { anyOf: [field.schema, { type: "null" }, { const: "don't know" }] },
    read: (raw, path, reader) => asked.read(raw === "don't know" ? null : raw, path, reader),
  };
}

const length = (about?: string) => known(quantityField("length", about));
const readingsField = listField(quantityField("length"), { min: 1, max: 100 });
const dimensionField = known(
  eitherField(
    ["readings", "planes"],
    groupField({
      readings: optional(readingsField),
      planes: optional(listField(readingsField, { min: 1, max: 20 })),
      how: known(choiceField(hows)),
      resolution: length("Smallest step of the instrument"),
    }),
    oneReading(),
  ),
);

/** A single reading, not said how it was taken. */
function oneReading() {
  const field = quantityField("length");
  return {
    schema: field.schema,
    read(raw: Json | undefined, path: string, reader: Parameters<typeof field.read>[2]) {
      const read = field.read(raw, path, reader);
      return read.ok ? { ok: true as const, value: { readings: [read.value] } } : read;
    },
  };
}

const yesNo = () => known(choiceField(yesNoUnknown));

const surveyField = groupField({
  name: optional(textField("What the box is called", 200)),
  place: optional(textField("Where it stands", 200)),
  motion: choiceField(motions, "How the shaft moves"),
  release: optional(choiceField(releases, "May what comes out be let out here")),
  zone: optional(choiceField(zones, "May ordinary phones and tablets go there")),
  datum: optional(choiceField(datums, "Where 12 o'clock is, seen facing the follower")),
  shaft: dimensionField,
  bore: dimensionField,
  depth: dimensionField,
  lantern: known(
    groupField({
      wanted: known(yesNoField()),
      width: length(),
      window: length("Between the lands"),
      land: length("Width of one land"),
      ringsThroatSide: known(countField({ min: 0, max: 40 })),
    }),
  ),
  port: known(groupField({ fromFace: length("Middle of the port from the box face"), fromThroat: length(), diameter: length() })),
  follower: known(groupField({ nose: length("Length that can enter the box"), gap: length("Flange to box face at finger-tight") })),
  studs: known(
    groupField({
      count: known(countField({ min: 1, max: 48 })),
      thread: known(textField("Such as M12 or 1/2-13", 40)),
      threadLeft: length("Thread the nuts can still run down"),
      propertyClass: known(textField("As marked on the stud, such as 8.8", 20)),
      nutCondition: known(choiceField(nutConditions)),
    }),
  ),
  set: known(
    groupField({
      rings: known(countField({ min: 1, max: 40 })),
      endRings: known(choiceField(endRings)),
      spacer: length(),
      throatBush: length("Length of a loose throat bush"),
      seated: known(choiceField(howSeated)),
      section: length("Stock section, when it is settled"),
      series: known(choiceField(stockSeries)),
      cut: known(choiceField(cuts)),
      angle: known(quantityField("angle")),
      style: known(textField("Id of the packing, when it is settled", 60)),
      glandStress: known(quantityField("stress")),
    }),
  ),
  service: known(
    groupField({
      fluids: known(listField(textField(undefined, 80), { max: 20 })),
      phase: known(choiceField(["liquid", "gas"])),
      temperature: known(quantityField("temperature", "At the packing")),
      pH: known(numberField({ min: -2, max: 16 })),
      solids: known(choiceField(["none", "fibrous", "fine", "coarse"])),
      use: known(choiceField(["none", "potable", "food", "oxygen"])),
      sleeve: known(textField("Id of the material the packing runs on", 60)),
      rotation: known(quantityField("rotation")),
      stroke: length(),
      pressure: known(quantityField("pressure", "At the box, by gauge")),
      suction: known(quantityField("pressure")),
      discharge: known(quantityField("pressure")),
      impeller: known(choiceField(boxDesigns)),
      impellerDiameter: known(choiceField(impellerDiameters)),
    }),
  ),
  flush: known(
    groupField({
      fitted: known(yesNoField()),
      supply: known(quantityField("pressure")),
      set: known(quantityField("pressure")),
      kind: known(choiceField(flushServices)),
    }),
  ),
  condition: known(
    groupField({
      critical: known(yesNoField("A machine whose runout is measured by dial")),
      renewed: known(listField(choiceField(["shaft", "sleeve"]), { max: 2 })),
      shaftLift: length(),
      endFloat: length(),
      runout: length("Whole swing of the dial"),
      sleeveGroove: length(),
      finish: length(),
      boreFinish: length(),
      followerClearance: length("Radial gap of the follower"),
      throatClearance: length("Radial gap at the throat"),
      hardness: known(numberField({ min: 0, max: 1500 }, "Brinell")),
      clockGaps: known(listField(quantityField("length"), { min: 4, max: 4 }, "Shaft to bore at 12, 3, 6 and 9 o'clock")),
      sightings: known(groupField(sightingFields())),
      houseLimits: known(
        listField(
          groupField({
            item: textField(),
            value: optional(quantityField("length")),
            number: optional(numberField()),
            setBy: textField(),
            why: optional(textField()),
          }),
          { max: 50 },
        ),
      ),
    }),
  ),
  hazards: known(
    groupField({
      hot: yesNo(),
      toxic: yesNo(),
      flammable: yesNo(),
      corrosive: yesNo(),
      quench: yesNo(),
      grease: yesNo(),
      heating: yesNo(),
      vertical: yesNo(),
      ringForm: known(choiceField(ringForms)),
      seating: known(choiceField(seatingsBeforeStart)),
      oldPacking: known(choiceField(oldPackings)),
      service: known(choiceField(services)),
    }),
  ),
});

function sightingFields(): { readonly [name: string]: Field<string | undefined> } {
  return Object.fromEntries(Object.entries(conditionSightings).map(([name, choices]) => [name, known(choiceField(choices))]));
}

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
