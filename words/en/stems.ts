/** Sentences of this topic, by id. */
export const stemsSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const stemsNames: Readonly<Record<string, string>> = {};
