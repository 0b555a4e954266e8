/** Sentences of this topic, by id. */
export const fitSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const fitNames: Readonly<Record<string, string>> = {};
