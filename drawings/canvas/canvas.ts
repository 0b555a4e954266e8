import type { Stroke } from "../pens.ts";
import type { Point } from "../shapes.ts";
import type { Run } from "../text/runs.ts";

/** Something that can be drawn on: millimetres from its top left corner, y down. */
export interface Canvas {
  /** Lines through points; closed ones come back to where they began. */
  lines(pieces: readonly (readonly Point[])[], stroke: Stroke, closed: boolean): void;
  area(pieces: readonly (readonly Point[])[], colour: string): void;
  circle(centre: Point, radius: number, stroke: Stroke): void;
  /** A line of text from its baseline; turned, it reads upwards. */
  text(runs: readonly Run[], at: Point, as: TextStyle): void;
}

export interface TextStyle {
  readonly size: number;
  readonly colour: string;
  readonly anchor?: "start" | "middle" | "end";
  readonly turned?: boolean;
}
