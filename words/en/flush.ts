/** Sentences of this topic, by id. */
export const flushSentences: Readonly<Record<string, string>> = {
  "design-not-known": "“{given}” is not a design of pump known here.",
  "discharge-below-suction":
    "Discharge is below suction, {suction}. A pump cannot do that while it pumps: look whether the two gauges were swapped.",
  "box-pressure-not-known": "Box pressure needs either a gauge at the flush tee, or suction and discharge pressure.",
  "box-pressure-estimate": "This is an estimate from the design of the pump, and may be out by half. A gauge at the flush tee is better.",
  "design-unknown":
    "The design of the pump is not known, so the band is wide. Find out whether it has balance holes, back vanes or neither.",
  "impeller-diameter-unknown":
    "Back vanes hold back less when the impeller is trimmed. Whether this one is trimmed is not known, so the band covers both.",
  "worn-rings-raise-box-pressure":
    "Worn rings at the back of the impeller, or blocked balance holes, let box pressure climb towards discharge.",
  "pump-makes-no-pressure": "Discharge equals suction: the pump stands, or makes no pressure. The box is at suction pressure.",
  "tee-reads-the-lantern":
    "With the flush shut, a gauge at the tee reads the pressure at the lantern ring, which is at or somewhat below that at the bottom of the box. With the flush on it reads the flush.",
  "gauge-outside-design":
    "The gauge reads outside what the design would give, {low} to {high}. Check the gauge, the balance holes, the rings at the back of the impeller, and the design given.",
};

/** Names of this topic, where the id is not itself the word. */
export const flushNames: Readonly<Record<string, string>> = {
  "box-pressure-factor": "share of the differential that reaches the box",
  "box-rise": "box pressure above suction",
  "box-rise-printed": "box pressure above suction, as printed",
  "box-rise-lowest": "lowest box pressure above suction",
  "box-rise-highest": "highest box pressure above suction",
  "box-rise-least-published": "least published figure",
  "box-rise-most-published": "greatest published figure",
  "box-pressure-lowest": "lowest box pressure",
  "box-pressure-highest": "highest box pressure",
  "box-pressure-published": "box pressure by one source",
  differential: "discharge less suction",
  measuredGauge: "gauge at the flush tee",
  gaugeError: "error of the gauge",
  "gauge-reading": "box pressure as read",
  "gauge-reading-lowest": "lowest box pressure the reading allows",
  "gauge-reading-highest": "highest box pressure the reading allows",
  "balance-holes-back-rings": "balance holes and rings at the back of the impeller",
  "back-vanes": "back vanes",
  "plain-closed": "closed impeller without balance holes or back rings",
  "double-suction": "double suction",
  "two-stage-back-to-back-low": "two stages back to back, box at the first suction",
  "two-stage-back-to-back-high": "two stages back to back, box at the second suction",
  "multistage-low-end": "multistage, low-pressure end",
  "multistage-high-end-balance-line": "multistage, high-pressure end with a balance line",
  "progressing-cavity": "progressing cavity",
  "progressing-cavity-reversed": "progressing cavity, run the other way",
  "overhung-unknown": "overhung impeller, details unknown",
};
