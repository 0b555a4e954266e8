import { motions, releases, uses } from "@ringwright/core/box";
import {
  conditions,
  cooling,
  films,
  fluidsList,
  hardnessScales,
  material,
  materials,
  phases,
  ringMaterials,
  solidsLevels,
} from "@ringwright/core/materials";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, idField, listField, numberField, optional, quantityField, textField, yesNoField } from "../field.ts";
import { choiceShape, groupShape, listShape, maybe, numberShape, textShape } from "../shape.ts";
import { endRingShape, fluidCellShape, lanternShape, lineShape, nameShape, sentenceShape, sleeveShape } from "./material-fact-shapes.ts";
import { bindingShape, contributionsShape, reasonShape, saysShape } from "./material-shapes.ts";
import { textOrGroup } from "./text-or-group.ts";

const item = groupField(
  {
    style: textField("Id of a style: answer materials lists them all."),
    sheet: optional(textField("Which document says so, as a person would find it again.")),
    recordedBy: optional(textField("Who put it down.")),
    speed: optional(quantityField("speed")),
    pressure: optional(quantityField("pressure")),
    temperature: optional(quantityField("temperature")),
    pHMin: optional(numberField()),
    pHMax: optional(numberField()),
    suits: optional(listField(idField("fluid"), { max: 60 }, "Fluids that the item's own chemical chart allows.")),
    listed: optional(listField(choiceField(["potable", "food"]), { max: 2 }, "Uses that a certificate for this very item covers.")),
    oxygenLot: optional(yesNoField("This very lot was tested, cleaned and never lubricated, for oxygen.")),
    inhibited: optional(yesNoField("It has a corrosion inhibitor or a sacrificial part, and the owner of the machine knows.")),
    lubricant: optional(textField("Which lubricant is in it, or none.")),
    rubber: optional(textField("Rubber of its core: nbr, epdm, fkm, silicone.")),
    jacket: optional(textField("Style of the jacket over its core.")),
  },
  "What the sheet of an item in stock says of that very item.",
);

const service = groupField({
  motion: choiceField(motions, "How the shaft moves."),
  fluids: optional(listField(idField("fluid"), { max: 60 }, "Everything that may touch the packing, by id: answer fluids lists them.")),
  temperature: optional(quantityField("temperature", "At the packing, not in the tank.")),
  pressure: optional(quantityField("pressure", "In the box.")),
  speed: optional(quantityField("speed", "Of the shaft surface.")),
  pH: optional(numberField()),
  solids: optional(choiceField(solidsLevels)),
  sleeve: optional(
    textOrGroup(
      "material",
      idField("sleeve", "Id of a sleeve material."),
      groupField({
        material: optional(idField("sleeve", "Id of a sleeve material.")),
        hardness: optional(numberField()),
        scale: optional(choiceField(hardnessScales, "Scale of the hardness; Brinell when left out.")),
        wetWhenIdle: optional(yesNoField("Whether it stands wet while idle.")),
      }),
    ),
  ),
  phase: optional(choiceField(phases)),
  condition: optional(
    textOrGroup(
      "overall",
      choiceField(conditions),
      groupField({
        overall: optional(choiceField(conditions)),
        throatGap: optional(quantityField("length", "Radial, between shaft and throat.")),
        followerGap: optional(quantityField("length", "Radial, between shaft and gland follower.")),
      }),
    ),
  ),
  release: optional(choiceField(releases, "Whether what comes out may be let out here.")),
  use: optional(choiceField(uses)),
  film: optional(choiceField(films, "What wets the rings.")),
  cooling: optional(choiceField(cooling, "How much flush or other cooling there is.")),
  items: optional(listField(item, { max: 100 }, "Items in stock, with what their own sheets say.")),
  index: optional(
    groupField(
      { check: optional(numberField()), ask: optional(numberField()) },
      "Pressure share times speed share from which to look at cooling, and from which to ask the supplier.",
    ),
  ),
});

const because = listShape(reasonShape);

export const materialsAnswers: readonly AnyAnswer[] = [
  answer({
    name: "materials",
    about: "Which kinds of packing may be used, best first, which may not, and the one constraint that decides each.",
    question: service,
    answer: groupShape({
      ranked: listShape(
        groupShape({
          style: textShape,
          family: textShape,
          standing: choiceShape(["fits", "look", "ask"]),
          score: numberShape,
          contributions: contributionsShape,
          binding: bindingShape,
          because,
        }),
      ),
      rejected: listShape(groupShape({ style: textShape, family: textShape, binding: bindingShape, because })),
      nearly: listShape(groupShape({ style: textShape, constraint: textShape, clears: saysShape })),
      sensitive: listShape(groupShape({ input: textShape, lost: listShape(textShape), gained: listShape(textShape) })),
    }),
    work: (question, facts) => materials(question, facts.materials),
  }),
  answer({
    name: "material",
    about: "One kind of packing with everything known of it, each figure with where it comes from.",
    question: groupField({ id: textField("Id of a style, as in the answer materials.") }),
    answer: groupShape({
      id: textShape,
      family: textShape,
      parts: listShape(listShape(textShape)),
      notStated: listShape(textShape),
      lines: listShape(lineShape),
    }),
    work: (question, facts) => material(question, facts.materials),
  }),
  answer({
    name: "ring-materials",
    about: "What lantern ring, end rings and sleeve can be of, and which lantern rings stand this temperature and these fluids.",
    question: groupField({
      temperature: optional(quantityField("temperature", "At the packing.")),
      fluids: optional(listField(idField("fluid"), { max: 60 }, "Everything that may touch them, by id.")),
      style: optional(textField("Style of the packing, for the end rings that go with it.")),
    }),
    answer: groupShape({ lanterns: listShape(lanternShape), ends: listShape(endRingShape), sleeves: listShape(sleeveShape) }),
    work: (question, facts) => ringMaterials(question, facts.materials),
  }),
  answer({
    name: "fluids",
    about: "The fluids that the materials were compared with, by id, and what each does to every fibre, metal and lubricant.",
    question: groupField({ find: optional(textField("Part of an id.")) }),
    answer: groupShape({
      fluids: listShape(
        groupShape({
          id: textShape,
          name: nameShape,
          note: maybe(sentenceShape),
          phase: maybe(choiceShape(["liquid", "gas"])),
          cells: listShape(fluidCellShape),
        }),
      ),
    }),
    work: (question, facts) => fluidsList(question, facts.materials),
  }),
];
