import type { BoxDrawing } from "@ringwright/drawings";

/** The question behind a figure of the drawing, by the figure's id. */
const fields: Readonly<Record<string, string>> = {
  "figure-bore": "bore",
  "figure-shaft": "shaft",
  "figure-stem": "shaft",
  "figure-sleeve": "shaft",
  "figure-depth": "depth",
  "figure-nose": "follower.nose",
  "figure-gland-gap": "follower.gap",
  "figure-port-at": "port.fromThroat",
  "studs-label-2": "studs.threadLeft",
};

/** The field of the survey that a figure in blue was measured as; nothing for other parts of the drawing. */
export function fieldOfFigure(id: string, { port }: Pick<BoxDrawing, "port">): string | undefined {
  const [, line] = /^port-label(?:-(\d))?$/u.exec(id) ?? [undefined, undefined];
  if (id.startsWith("port-label")) return [...(port?.flush ? ["flush.set"] : []), "port.diameter"][Number(line ?? 1) - 1];
  return Object.hasOwn(fields, id) ? fields[id] : undefined;
}
