/** Sentences of this topic, by id. */
export const lanternSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const lanternNames: Readonly<Record<string, string>> = {};
