/** Sentences of this topic, by id. */
export const fluidSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const fluidNames: Readonly<Record<string, string>> = {};
