/** Sentences of this topic, by id. */
export const materialsSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const materialsNames: Readonly<Record<string, string>> = {};
