/** Sentences of this topic, by id. */
export const unitsSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const unitsNames: Readonly<Record<string, string>> = {};
