import { type Show, sayIn } from "@ringwright/words";
import type { Dimension, Text } from "../shapes.ts";
import { figure } from "../text/figure.ts";
import { type Run, runsOf } from "../text/runs.ts";

/** What placing needs to know of the page. Lengths on paper are multiples of the text size, so that a page grows with its text. */
export interface Style {
  /** Font size of ordinary text, mm of paper. */
  readonly size: number;
  readonly show: Show;
  /** Narrow page: diameters turn along their lines. */
  readonly compact: boolean;
}

export const arrowLength = ({ size }: Style): number => 0.62 * size;
export const rowPitch = ({ size }: Style): number => 1.75 * size;

export function words({ show }: Style, text: Text): string {
  return typeof text === "string" ? text : sayIn(show, text);
}

/** What a dimension prints: what it is called, and the figure. */
export function dimensionRuns(style: Style, dimension: Dimension, withName: boolean): readonly Run[] {
  const { called, states, open } = dimension;
  const value: Run = { text: open ? "?" : figure(states, style.show.system, dimension), face: "numbers", bold: false };
  return called !== undefined && withName ? [...runsOf(`${words(style, called)} `), value] : [value];
}
