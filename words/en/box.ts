/** Sentences of this topic, by id. */
export const boxSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const boxNames: Readonly<Record<string, string>> = {};
