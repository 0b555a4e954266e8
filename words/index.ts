export { english } from "./en/index.ts";
export { allIds, nameOf, type Show, say, sayIn, showIn } from "./say.ts";
