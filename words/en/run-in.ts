/** Sentences of this topic, by id. */
export const runInSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const runInNames: Readonly<Record<string, string>> = {};
