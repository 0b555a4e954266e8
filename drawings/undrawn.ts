import type { Says } from "@ringwright/core/workings";
import type { Drawing, Text } from "./shapes.ts";

/** A drawing of what cannot be drawn: it says why, and nothing else. */
export function undrawn(head: { readonly name: string; readonly title: Text; readonly subtitle?: Text }, why: readonly Says[]): Drawing {
  return {
    ...head,
    description: why,
    parts: [],
    shapes: [],
    dimensions: [],
    balloons: [],
    labels: [],
    notes: why.map((text, i) => ({ id: `fault-${i + 1}`, text, ink: "attention", bold: true })),
    toScale: false,
    legible: { length: 1, sizes: 1 },
  };
}
