/** Sentences of this topic, by id. */
export const heatSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const heatNames: Readonly<Record<string, string>> = {};
