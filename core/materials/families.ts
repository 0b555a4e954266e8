/** What a packing is of, as the trade groups it. The one list: ring gaps, weaves and styles go by it. */
export const families = [
  "graphite",
  "carbon",
  "ptfe",
  "aramid",
  "novoloid",
  "acrylic",
  "glass",
  "vegetable-fibre",
  "melamine",
  "metal",
  "injectable",
  "elastomer-core",
] as const;
export type Family = (typeof families)[number];
