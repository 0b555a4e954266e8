import type { Label, LabelLine, Shape } from "../shapes.ts";
import type { BoxFrame } from "./frame.ts";
import type { BoxDrawing } from "./input.ts";
import { line, type Pieces } from "./pieces.ts";

/** The flush port's axis, and what is known of it: flush, size, open or not. */
export function port(box: BoxDrawing, frame: BoxFrame): Pieces {
  if (!box.port || !frame.port) return { parts: [], shapes: [] };
  const { at } = frame.port;
  const { flush, diameter, state } = box.port;
  const shapes: readonly Shape[] = [
    line("port-axis", "port", "centre", [
      [at, frame.bore],
      [at, frame.wall],
    ]),
  ];
  const lines: LabelLine[] = [];
  // Nobody reads a pressure finer than a millibar; less would print as a row of noughts.
  const pressure = (one: number) => Math.round(one / 100) * 100;
  if (flush)
    lines.push({
      text: { id: "drawing-flush", with: { pressure: { value: pressure(flush.value), kind: "pressure", decimals: 1 } } },
      ink: flush.by,
    });
  lines.push({
    text: { id: "drawing-port", with: { diameter: { value: diameter.value, kind: "length", decimals: 1 } } },
    ink: diameter.by,
  });
  if (state) lines.push({ text: { id: `drawing-port-${state}` }, ink: state === "open" ? "worked" : "attention", bold: state !== "open" });
  const label: Label = {
    id: "port-label",
    lines,
    at: [at, frame.wall],
    place: "above",
    anchor: "start",
    ...(flush ? { arrow: flush.by } : {}),
  };
  return { parts: [{ id: "port", called: { id: "drawing-part-port" } }], shapes, labels: [label] };
}
