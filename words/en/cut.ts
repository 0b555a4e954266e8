/** Sentences of this topic, by id. */
export const cutSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const cutNames: Readonly<Record<string, string>> = {};
