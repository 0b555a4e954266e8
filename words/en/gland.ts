/** Sentences of this topic, by id. */
export const glandSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const glandNames: Readonly<Record<string, string>> = {};
