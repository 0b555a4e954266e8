import type { Drawing } from "./shapes.ts";

/** A drawing without what is written in and round it: to be told apart in a list, where a figure would be too small to read. */
export function bare(drawing: Drawing): Drawing {
  return { ...drawing, dimensions: [], balloons: [], labels: [], notes: [], toScale: false };
}
