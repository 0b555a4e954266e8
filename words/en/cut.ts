/** Sentences of this topic, by id. */
export const cutSentences: Readonly<Record<string, string>> = {
  "rings-no-section": "Neither bore nor section is known: measure the bore, or say how thick the packing is.",
  "rings-bore-not-above-shaft": "The bore, {bore}, must be larger than the shaft, {shaft}.",
  "rings-section-above-shaft":
    "The section, {section}, is thicker than the shaft, {shaft}. Was one of them typed in another unit, or tenfold?",
  "rings-butt-is-square": "A butt cut is square, 90° to the strip; the {angle} given was not used. For a slant choose skive.",
  "rings-gap-family":
    "What the packing is made of is not known, so neither is whether its ends should meet. The printed opinions are listed.",
};

/** Names of this topic, where the id is not itself the word. */
export const cutNames: Readonly<Record<string, string>> = {
  "ring-length": "length of a ring on its mean line",
  "ring-bevel": "what the slant adds",
  "ring-cut-length": "cut length, tip to tip",
  "ring-cut-length-from-square": "cut length if the angle was read from square",
  "angle-from-square": "angle as read off a square",
  "ring-shortcut-error": "error of cutting the shaft's circumference only",
  "rounded-to-millimetre": "rounded to the millimetre",
  "rounded-to-thirty-second": "rounded to the thirty-second of an inch",
  "butt-gap": "gap between the ends",
  "ring-length-less-gap": "cut length with the gap taken off",
  "coil-length": "strip to take from the coil",
  "coil-length-rounded": "strip to take, rounded up",
  angle: "angle between cut face and strip",
  trim: "trim on each ring",
  shaftUncertainty: "uncertainty of the shaft",
  boreUncertainty: "uncertainty of the bore",
};
