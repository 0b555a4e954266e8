export { english } from "./en/index.ts";
export { allIds, inputName, nameOf, type Show, say, sayIn, showIn } from "./say.ts";
