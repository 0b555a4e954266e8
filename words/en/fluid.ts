/** Sentences of this topic, by id. */
export const fluidSentences: Readonly<Record<string, string>> = {
  "water-near-critical":
    "At {temperature} and this pressure water is too near its critical point to be worked out here. Up to {highest} absolute it can be.",
  "water-near-boiling": "This is within a hundredth of the pressure at which it boils. It was taken as {phase}; both may be there.",
};

/** Names of this topic, where the id is not itself the word. */
export const fluidNames: Readonly<Record<string, string>> = {};
