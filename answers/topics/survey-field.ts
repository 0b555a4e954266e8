import { datums, motions, releases, uses, zones } from "@ringwright/core/box";
import { oldPackings, ringForms, seatings as seatingsBeforeStart, services, yesNoUnknown } from "@ringwright/core/cautions";
import { conditionSightings } from "@ringwright/core/condition";
import { boxDesigns, flushServices, impellerDiameters } from "@ringwright/core/flush";
import { seatings as howSeated, nutConditions } from "@ringwright/core/gland";
import { phases, solidsLevels } from "@ringwright/core/materials";
import { cuts, endRings } from "@ringwright/core/rings";
import { stockSeries } from "@ringwright/core/section";
import { hows } from "@ringwright/core/uncertainty";
import {
  choiceField,
  countField,
  designationField,
  eitherField,
  type Field,
  groupField,
  idField,
  type Json,
  listField,
  numberField,
  optional,
  quantityField,
  textField,
  yesNoField,
} from "../field.ts";

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

/** Everything a box file may say; only the motion must be there. */
export const surveyField = groupField({
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
      propertyClass: known(designationField("As marked on the stud, such as 8.8", 20)),
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
      fluids: known(listField(idField("fluid"), { max: 20 })),
      phase: known(choiceField(phases)),
      temperature: known(quantityField("temperature", "At the packing")),
      pH: known(numberField({ min: -2, max: 16 })),
      solids: known(choiceField(solidsLevels)),
      use: known(choiceField(uses)),
      sleeve: known(idField("sleeve", "Id of the material the packing runs on", 60)),
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
