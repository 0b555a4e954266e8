/** Sentences of this topic, by id. */
export const ringsSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const ringsNames: Readonly<Record<string, string>> = {};
