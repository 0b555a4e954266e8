export { english } from "./en/index.ts";
export { englishSpellings } from "./en/spellings.ts";
export { allIds, inputName, nameOf, type Show, say, sayIn, showIn } from "./say.ts";
