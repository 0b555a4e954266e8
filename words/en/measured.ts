/** Sentences of this topic, by id. */
export const measuredSentences: Readonly<Record<string, string>> = {
  "measured-no-readings": "There is no reading here. Give at least one.",
  "measured-readings-and-planes": "Give either readings or planes, not both: the mean must come from one set.",
  "how-not-known": "Not known how this was measured, so it is taken as roughly as with a rule. Say how, and the answer gets firmer.",
  "how-not-said": "Not said how this was measured: only the scatter and the step of the scale count, nothing for the tool.",
  "slip-meant": "{input} reads {given}, which few boxes have. Is it {suggestion}?",
  "slip-meant-either": "{input} reads {given}, which few boxes have. Is it {suggestion}, or {other}?",
  "slip-unlikely": "{input} reads {given}. Most boxes lie between {low} and {high}. Look at it once more.",
  "slip-against-siblings": "{input} reads {given}, but the other readings are about {others}. Is it {suggestion}?",
};

/** Names of this topic, where the id is not itself the word. */
export const measuredNames: Readonly<Record<string, string>> = {
  repeatability: "uncertainty from the scatter of the readings",
  "usual-resolution": "smallest step usually read off",
  "resolution-uncertainty": "uncertainty from the step of the scale",
  "limit-of-error": "what this way of measuring may be wrong by",
  "method-uncertainty": "uncertainty from how it was taken",
  "spread-of-readings": "largest less smallest reading",
  "expanded-uncertainty": "uncertainty, 95 in 100",
  "bore-gauge": "bore gauge",
  "caliper-at-mouth": "caliper at the mouth of the box",
  "depth-gauge": "depth gauge",
  "drill-shank": "drill shank",
  wire: "bent wire",
  rule: "steel rule",
  unknown: "not known",
};
