/** Sentences of this topic, by id. */
export const sectionSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const sectionNames: Readonly<Record<string, string>> = {};
