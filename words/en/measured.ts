/** Sentences of this topic, by id. */
export const measuredSentences: Readonly<Record<string, string>> = {};

/** Names of this topic, where the id is not itself the word. */
export const measuredNames: Readonly<Record<string, string>> = {};
