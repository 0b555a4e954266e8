import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import type { Streams } from "./streams.ts";

/** The drawings of a plan, by the option that asks for one. */
const drawingNames = { drawing: "box-section", clock: "joint-clock", strip: "cut-strip", push: "push" } as const;
type DrawingOption = keyof typeof drawingNames;
/** Which drawing goes into which file. */
export type DrawingFiles = { readonly [name in DrawingOption]?: string };

/**
 * Writes the drawings that were asked for, and gives a line for each that says
 * where it went or why there is none. The drawing package is loaded only here.
 */
export async function writeDrawings(plan: Plan, files: DrawingFiles, system: UnitSystem, streams: Streams): Promise<readonly string[]> {
  const asked = (Object.keys(drawingNames) as DrawingOption[]).filter((name) => files[name] !== undefined);
  if (asked.length === 0) return [];
  const { drawOfPlan, toSvg, usualWidth } = await import("@ringwright/drawings");
  return asked.map((option) => {
    const name = drawingNames[option];
    const drawing = drawOfPlan(name, plan, plan.survey.name ?? say({ id: "plan-unnamed-box" }));
    return written(drawing && toSvg(drawing, { system, width: usualWidth[name] }), files[option] ?? "", streams);
  });
}

function written(svg: string | undefined, file: string, streams: Streams): string {
  if (svg === undefined) return say({ id: "plan-no-drawing", with: { file } });
  try {
    streams.write(file, svg);
    return say({ id: "plan-drawing-written", with: { file } });
  } catch (error) {
    return say({ id: "plan-drawing-not-written", with: { file, why: error instanceof Error ? error.message : String(error) } });
  }
}
