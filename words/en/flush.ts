/** Sentences of this topic, by id. */
export const flushSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const flushNames: Readonly<Record<string, string>> = {};
