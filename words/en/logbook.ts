/** Sentences of this topic, by id. */
export const logbookSentences: Readonly<Record<string, string>> = {
  "next-end-bridge": "Make-do past its day, {until}: {typed} ({owner})",
  "next-settle": "Settle what two devices say: {input}",
  "next-repack": "Repack: gland gap {gap}",
  "next-motion": "Say how the shaft moves",
  "next-measure": "Measure {first}",
  "next-measure-two": "Measure {first} and {second}",
  "next-measure-three": "Measure {first}, {second} and {third}",
  "next-choose-packing": "Choose the packing",
  "next-choose-rings": "Choose the number of rings",
  "next-choose-both": "Choose packing and number of rings",
  "next-fit": "Fit the rings",
  "next-fit-one": "Fit the rings: 1 step done",
  "next-fit-on": "Fit the rings: {steps} steps done",
  "next-run-in": "Run in: {hours} h since start",
  "next-round": "Look at it on the round",
};

/** Names of this topic, where the id is not itself the word. */
export const logbookNames: Readonly<Record<string, string>> = {};
