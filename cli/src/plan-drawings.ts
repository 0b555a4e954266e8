import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import type { Streams } from "./streams.ts";

/** The drawings of a plan, by the option that asks for one. */
const drawingNames = { drawing: "box-section", clock: "joint-clock", strip: "cut-strip", push: "push" } as const;
type DrawingOption = keyof typeof drawingNames;
/** Which drawing goes into which file. */
export type DrawingFiles = { readonly [name in DrawingOption]?: string };

/** What became of a drawing: a line that says where it went or why there is none, and whether its file could not be written. */
export interface Drawn {
  readonly line: string;
  readonly failed: boolean;
}

/** Writes the drawings that were asked for. The drawing package is loaded only here. */
export async function writeDrawings(plan: Plan, files: DrawingFiles, system: UnitSystem, streams: Streams): Promise<readonly Drawn[]> {
  const asked = (Object.keys(drawingNames) as DrawingOption[]).filter((name) => files[name] !== undefined);
  if (asked.length === 0) return [];
  const { drawOfPlan, toSvg, usualWidth } = await import("@ringwright/drawings");
  return asked.map((option) => {
    const name = drawingNames[option];
    const drawing = drawOfPlan(name, plan, plan.survey.name ?? say({ id: "plan-unnamed-box" }));
    return written(drawing && toSvg(drawing, { system, width: usualWidth[name] }), files[option] ?? "", streams);
  });
}

function written(svg: string | undefined, file: string, streams: Streams): Drawn {
  if (svg === undefined) return { line: say({ id: "plan-no-drawing", with: { file } }), failed: false };
  try {
    streams.write(file, svg);
    return { line: say({ id: "plan-drawing-written", with: { file } }), failed: false };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { line: say({ id: "plan-drawing-not-written", with: { file, why } }), failed: true };
  }
}
