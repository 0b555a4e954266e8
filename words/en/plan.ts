/** Sentences of this topic, by id. */
export const planSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const planNames: Readonly<Record<string, string>> = {};
