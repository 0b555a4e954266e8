/** Sentences of this topic, by id. */
export const cautionsSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const cautionsNames: Readonly<Record<string, string>> = {};
