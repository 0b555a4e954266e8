/** Sentences of this topic, by id. */
export const sectionSentences: Readonly<Record<string, string>> = {
  "bore-not-larger":
    "The bore, {bore}, must be larger than the shaft, {shaft}: there is no room for packing between them. Measure both again.",
  "bore-not-larger-meant":
    "The bore, {bore}, must be larger than the shaft, {shaft}: there is no room for packing between them. Was the bore {meant}?",
  "section-slip":
    "The gap comes out at {section}; nearly every box lies between {low} and {high}. {input} reads {given}. Is it {suggestion}?",
  "section-unlikely": "The gap comes out at {section}; nearly every box lies between {low} and {high}. Measure shaft and bore again.",
  "readings-used": "{input}: {single} lies outside its own readings. Their mean, {mean}, is used.",
  "nameplate-differs": "Nameplate or drawing says {nameplate}; the box as it is measures {section}. The box decides.",
  "nameplate-agrees": "Nameplate or drawing says {nameplate}, and the box as it is agrees.",
  "stock-fits": "Goes in as it is.",
  "stock-roll": "A little big: roll it down to the gap with a piece of pipe on a flat bench. Never hammer it.",
  "stock-too-big": "Too big to roll, and never hammered in.",
  "stock-too-small": "Too small: it would have to be crushed to reach shaft and bore.",
  "section-fit": "One stock size fits the gap as it is.",
  "section-either": "More than one stock size fits: either will do.",
  "section-roll": "No stock size fits as it is; the next larger one can be rolled down to the gap. Never hammer it.",
  "section-sleeve-or-bush":
    "No stock size fits, and the next larger one is too big to roll. Renew the sleeve, bush the bore, or have the section braided to size.",
  "section-below-stock":
    "The gap is smaller than any stock size. Check both diameters; if they are right, this box takes no braided packing.",
  "section-measure-again":
    "It is not certain that this size fills the gap, measured as it was. Take both diameters again with something finer before cutting.",
  "section-preformed": "Formed rings are not rolled: order them to the shaft and bore as measured.",
};

/** Names of this topic, where the id is not itself the word. */
export const sectionNames: Readonly<Record<string, string>> = {
  "braid-tolerance": "how far a braid may be off its size, either way",
  "rolling-share": "how far a braid may be rolled down",
  "nearest-probability": "chance that this size is the nearest",
  "fill-probability": "chance that this size fills the gap",
  "neale-braid": "Tribology Handbook, all but expanded graphite",
  "neale-expanded-graphite": "Tribology Handbook, expanded graphite",
  "din-3780": "DIN 3780",
  "inch-rotary": "inch series for rotary shafts",
  "section-root-rule": "root rule, Chinese design texts",
  "section-root-ratio": "section over the root of the shaft",
};
