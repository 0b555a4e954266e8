import { inUnit, type Length } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import type { Balloon, Drawing, Label, Note, Point, Shape, Text } from "./shapes.ts";
import { undrawn } from "./undrawn.ts";

/** How much of one further push reaches each place along the set. */
export interface StressCurve {
  readonly title?: Text;
  /** Rings, lantern ring, spacers; distances from the throat shoulder. */
  readonly parts: readonly {
    readonly ring?: number;
    readonly kind?: "lantern" | "spacer" | "bush";
    readonly from: Length;
    readonly to: Length;
  }[];
  readonly curves: readonly {
    readonly motion: "turning" | "standing";
    /** Share of the push at each place, 1 at the follower. */
    readonly points: readonly { readonly fromThroat: Length; readonly share: number }[];
  }[];
  /** What the curves rest on: ratio and friction with their spread. */
  readonly basis?: Text;
}

/** Height of 100 % over the length of the set. */
const tall = 0.5;

/**
 * The push along the set, throat on the left as in the section: turning drawn
 * through, standing dashed, each named where it reaches the bottom ring.
 * @example toSvg(drawStressCurve({ parts, curves: [{ motion: "turning", points }] }), { width: 103 })
 */
export function drawStressCurve({ title, parts, curves, basis }: StressCurve): Drawing {
  const head = { name: "stress-curve", title: title ?? { id: "drawing-stress-curve" } };
  const mm = (length: Length) => inUnit("length", length, "mm");
  const spans = parts.map(({ from, to }) => [mm(from), mm(to)] as const);
  const fine =
    spans.length > 0 &&
    spans.every(([from, to]) => to > from && from >= -1e-9 && to < 1e5) &&
    curves.length > 0 &&
    curves.every(
      ({ points }) =>
        points.length > 1 &&
        points.every(({ fromThroat, share }) => share >= 0 && share <= 1 + 1e-9 && fromThroat >= -1e-9 && mm(fromThroat) < 1e5),
    );
  if (!fine) return undrawn(head, [{ id: "drawing-cannot-curve" }]);
  const [start, end] = [Math.min(...spans.map(([from]) => from)), Math.max(...spans.map(([, to]) => to))];
  const height = tall * (end - start);
  const plain = (id: string, layer: Shape["layer"], ...points: readonly Point[]): Shape => ({
    id,
    part: "plot",
    layer,
    points,
    closed: false,
  });
  const shapes: Shape[] = [
    plain("axis", "thin", [start, 0], [end, 0]),
    plain("gland", "thin", [end, 0], [end, height]),
    plain("throat", "thin", [start, 0], [start, height]),
    plain("half", "grid", [start, height / 2], [end, height / 2]),
    plain("whole", "grid", [start, height], [end, height]),
    ...spans.slice(1).map(([from], i) => plain(`boundary-${i + 1}`, "thin", [from, 0], [from, 0.03 * height])),
  ];
  const labels: Label[] = [0, 50, 100].map((percent): Label => {
    const text: Text = { id: "drawing-percent", with: { percent } };
    return {
      id: `percent-${percent}`,
      lines: [{ text, ink: "quiet" }],
      at: [end, (height * percent) / 100],
      place: "here",
      anchor: "start",
      offset: [0.5, 0],
    };
  });
  const description: Says[] = [{ id: "drawing-says-curve" }];
  for (const { motion, points } of curves) {
    const line = [...points]
      .sort((a, b) => a.fromThroat - b.fromThroat)
      .map(({ fromThroat, share }): Point => [mm(fromThroat), share * height]);
    shapes.push({ id: motion, part: motion, layer: motion === "turning" ? "curve" : "dashed", points: line, closed: false });
    const reaches: Says = { id: `drawing-${motion}-reaches`, with: { percent: Math.round(((line[0]?.[1] ?? 0) / height) * 100) } };
    labels.push({
      id: `${motion}-label`,
      lines: [{ text: reaches, ink: "worked", bold: motion === "turning" }],
      at: line[0] ?? [start, 0],
      place: "left",
      anchor: "end",
    });
    description.push(reaches);
  }
  const balloons: Balloon[] = [];
  for (const [i, part] of parts.entries()) {
    const [from, to] = spans[i] ?? [0, 0];
    const at: Point = [(from + to) / 2, 0];
    if (part.ring !== undefined)
      balloons.push({ id: `station-${part.ring}`, part: "plot", text: String(part.ring), at, room: 0, lead: false, beside: [0, -1.2] });
    else if (part.kind)
      labels.push({
        id: `station-at-${i + 1}`,
        lines: [{ text: { id: `drawing-${part.kind}` }, ink: "quiet" }],
        at,
        place: "here",
        anchor: "middle",
        offset: [0, -2.75],
      });
  }
  const notes: readonly Note[] = basis === undefined ? [] : [{ id: "basis", text: basis, ink: "quiet" }];
  const rings = spans.filter((_, i) => parts[i]?.ring !== undefined).map(([from, to]) => to - from);
  return {
    ...head,
    description,
    parts: [
      { id: "plot", called: { id: "drawing-part-plot" } },
      ...curves.map(({ motion }) => ({ id: motion, called: { id: `drawing-${motion}` } })),
    ],
    shapes,
    dimensions: [],
    balloons,
    labels,
    notes,
    toScale: false,
    // Each ring's number has to stand under it, and the three percentages one above the other.
    legible: { length: 1, sizes: Math.max(7 / (end - start), ...rings.map((ring) => 1.8 / ring)) },
  };
}
