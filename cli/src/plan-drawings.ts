import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import type { Streams } from "./streams.ts";

/** The drawings of a plan, by the option that asks for one. */
const drawingOptions = ["drawing", "clock", "strip", "push"] as const;
type DrawingOption = (typeof drawingOptions)[number];
/** Which drawing goes into which file. */
export type DrawingFiles = { readonly [name in DrawingOption]?: string };

/** What became of a drawing: a line that says where it went or why there is none, and whether its file could not be written. */
export interface Drawn {
  readonly line: string;
  readonly failed: boolean;
}

/** Writes the drawings that were asked for. The drawing package is loaded only here. */
export async function writeDrawings(plan: Plan, files: DrawingFiles, system: UnitSystem, streams: Streams): Promise<readonly Drawn[]> {
  const asked = drawingOptions.filter((name) => files[name] !== undefined);
  if (asked.length === 0) return [];
  const { boxOfPlan, drawBoxSection, drawCutStrip, drawJointClock, drawStressCurve, jointClockOfPlan, pushOfPlan, stripOfPlan, toSvg } =
    await import("@ringwright/drawings");
  const drawings = {
    drawing: () => {
      const box = boxOfPlan(plan, plan.survey.name ?? say({ id: "plan-unnamed-box" }));
      return box && toSvg(drawBoxSection(box), { system });
    },
    clock: () => {
      const clock = jointClockOfPlan(plan);
      return clock && toSvg(drawJointClock(clock), { system, width: 80 });
    },
    strip: () => {
      const strip = stripOfPlan(plan);
      return strip && toSvg(drawCutStrip(strip), { system, width: 140 });
    },
    push: () => {
      const push = pushOfPlan(plan);
      return push && toSvg(drawStressCurve(push), { system, width: 140 });
    },
  } as const satisfies Readonly<Record<DrawingOption, () => string | undefined>>;
  return asked.map((name) => written(drawings[name](), files[name] ?? "", streams));
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
