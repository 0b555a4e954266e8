/** Sentences about the question itself, by id. */
export const questionSentences: Readonly<Record<string, string>> = {
  "field-missing": "{input} is missing. {allowed}",
  "unit-missing": "{input}: “{given}” has no unit. Add one of: {allowed}.",
  "wrong-unit": "{input}: “{given}” is not in a unit that fits here. Use one of: {allowed}.",
  "not-a-quantity": "{input}: “{given}” could not be read as a number with a unit, such as 45 mm or 1 3/4 in.",
  "number-too-large": "{input}: “{given}” is too large to be a number.",
  "not-a-number": "{input}: “{given}” is not a number.",
  "not-a-whole-number": "{input}: {given} is not a whole number.",
  "number-outside": "{input}: {given} is outside what is possible here: {allowed}.",
  "not-a-choice": "{input}: “{given}” is not one of: {allowed}.",
  "not-yes-or-no": "{input}: answer true or false, not “{given}”.",
  "not-a-text": "{input} should be a short text.",
  "not-a-list": "{input} should be a list.",
  "list-length": "{input}: a list of {given} is not of an allowed length: {allowed}.",
  "not-a-group": "{input} should have named fields: {allowed}.",
  "unknown-field": "{input} is not a field here. Fields: {allowed}.",
  "unknown-answer": "There is no answer called “{given}”. There are: {allowed}.",
  "not-json": "The question could not be read: {why}.",
  "comma-or-thousands": "{input}: “{typed}” was read as {read}. If the comma marks thousands, it is {other}: write it without.",
  "outside-range": "{input} is outside what this can be worked out for.",
  "outside-validity": "{input} is outside where {rule} is known to hold.",
  "no-finite-result": "With these numbers {rule} has no usable result.",
};

/** Names of inputs, where the field's own name is not the word. */
export const questionNames: Readonly<Record<string, string>> = {};
