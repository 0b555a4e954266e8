/** Sentences of this topic, by id. */
export const fluidSentences: Readonly<Record<string, string>> = {
  "water-near-critical":
    "At {temperature} water is too near its critical point at this pressure for this to be worked out. The highest pressure that can be is given.",
  "water-near-boiling": "This is within a hundredth of the pressure at which it boils. It was taken as {phase}; both may be there.",
};

/** Names of this topic, where the id is not itself the word. */
export const fluidNames: Readonly<Record<string, string>> = {};
