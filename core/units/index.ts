export * from "./format.ts";
export * from "./parse.ts";
export * from "./quantity.ts";
export { findUnit, inUnit, quantity, toSi, type Unit, units, unitsOf } from "./unit.ts";
