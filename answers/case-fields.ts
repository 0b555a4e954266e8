import { motions, releases, uses, zones } from "@ringwright/core/box";
import { oldPackings, phases, ringForms, seatings, services, yesNoUnknown } from "@ringwright/core/cautions";
import { choiceField, idField, listField, optional, quantityField, textField } from "./field.ts";

const ask = (about: string) => optional(choiceField(yesNoUnknown, about));

/** A box in its place, as cautions and steps ask for it. Every field but the first may be left out; it is then not known. */
export const caseFields = {
  motion: choiceField(motions, "How the shaft moves."),
  release: optional(choiceField(releases, "Whether what comes out may be let out here.")),
  zone: optional(choiceField(zones, "Whether ordinary phones and tablets may go to the box.")),
  phase: optional(choiceField(phases, "Of what is in the box.")),
  fluids: optional(listField(idField("fluid", "Id of a fluid, as in the chemical matrix."), { max: 20 })),
  temperature: optional(quantityField("temperature", "Of the product in the box.")),
  pressure: optional(quantityField("pressure", "In the box.")),
  hot: ask("Hot enough to burn; worked out from the temperature when left out."),
  toxic: ask("Poisons by breath, mouth or skin."),
  flammable: ask("Burns, or gives vapour that burns."),
  corrosive: ask("Burns skin and eyes."),
  flush: ask("A flush line feeds the lantern ring."),
  quench: ask("A quench line feeds the gland."),
  grease: ask("Grease keeps the packing alive."),
  heating: ask("Steam jacket, trace heating or the like."),
  vertical: ask("The shaft hangs or stands, and must be held when the box is open."),
  style: optional(textField("Style of the new packing.", 80)),
  family: optional(textField("Family of the new packing, where its style is not settled.", 80)),
  ringForm: optional(choiceField(ringForms, "How the packing is made up; braid when left out.")),
  seating: optional(choiceField(seatings, "How hard each ring is pressed home; by the family when left out.")),
  sleeve: optional(idField("sleeve", "Material of shaft, sleeve or stem under the packing.")),
  oldPacking: optional(choiceField(oldPackings, "What is known of the packing that comes out.")),
  use: optional(choiceField(uses, "Drinking water, food or oxygen.")),
  service: optional(choiceField(services, "What sort of duty sets the waits; normal when left out.")),
};
