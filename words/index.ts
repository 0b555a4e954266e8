export { english } from "#english";
export { englishSpellings } from "./en/spellings.ts";
export { allIds, inputName, nameOf, type Show, say, sayIn, showIn } from "./say.ts";
