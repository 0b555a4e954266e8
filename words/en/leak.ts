/** Sentences of this topic, by id. */
export const leakSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const leakNames: Readonly<Record<string, string>> = {};
