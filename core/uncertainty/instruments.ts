import type { Length } from "../units/index.ts";

/** How a dimension was taken, from the finest to the roughest. `unknown` is an answer. */
export const hows = [
  "micrometer",
  "bore-gauge",
  "dial",
  "caliper",
  "caliper-at-mouth",
  "feeler",
  "depth-gauge",
  "drill-shank",
  "rule",
  "wire",
  "unknown",
] as const;
export type How = (typeof hows)[number];

/** What one way of measuring adds to every reading taken so, however often it is repeated. */
export interface Instrument {
  /** Half-width within which the reading lies about the true size, all values alike likely. */
  readonly limitOfError: Length;
  /** Smallest step that is read off. */
  readonly resolution: Length;
}

export type Instruments = Readonly<Record<How, Instrument>>;
