import { inUnit, type Length } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import type { Drawing, Label, Layer, Point, Rectangle, Shape, Text } from "./shapes.ts";
import type { Reading } from "./text/reading.ts";
import { undrawn } from "./undrawn.ts";

/** One judged point of a box beside everything that is said about it. Lengths in metres; a hardness is a plain number. */
export interface LimitRuler {
  readonly title: Text;
  readonly unit: "m" | "1";
  /** What is published or in use; `beside` is shown for comparison and does not count. */
  readonly limits: readonly { readonly value: number; readonly source: Text; readonly beside?: boolean }[];
  /** The site's own limit, and who set it. */
  readonly house?: { readonly value: number; readonly setBy: string };
  readonly measured?: { readonly value: number; readonly standardUncertainty: number };
}

/** A reading lies within so many standard uncertainties in about 95 of 100 cases. */
const coverage = 2;
/** Height of the ruler over its length. */
const tall = 0.028;
/** Values this close are one mark with two names. */
const same = 1e-9;

/**
 * Published limits as marks along a ruler, to scale, each named with who says
 * so; the band between the strictest and the widest hatched; the site's own
 * limit as a flag; what was measured in blue, with a bar for how sure it is.
 * @example toSvg(drawLimitRuler({ title: "runout", unit: "m", limits: [{ value: 5e-5, source: "ISO 9908" }], measured: { value: 6e-5, standardUncertainty: 6e-6 } }), { width: 120 })
 */
export function drawLimitRuler(ruler: LimitRuler): Drawing {
  const { title, unit, limits, house, measured } = ruler;
  const head = { name: "limit-ruler", title };
  const marks = merged(ruler);
  const counted = limits.filter(({ beside }) => beside !== true).map(({ value }) => value);
  const values = [...marks.map(({ value }) => value), ...(house ? [house.value] : []), ...(measured ? reachOf(measured) : [])];
  const fine = values.length > 0 && values.every((value) => value >= 0 && value < 1e5) && Math.max(...values) > 0;
  if (!fine || !((measured?.standardUncertainty ?? 0) >= 0)) return undrawn(head, [{ id: "drawing-cannot-ruler" }]);
  const along = (value: number) => (unit === "m" ? inUnit("length", value as Length, "mm") : value);
  const [from, to] = endsOf(values);
  const [start, end] = [along(from), along(to)];
  const height = tall * (end - start);
  const among = Math.max(...values);
  const shown = (value: number, named: boolean): Reading => ({ value, unit, among, ...(named ? { named } : {}) });
  const shapes: Shape[] = [box("ruler", "thin", [start, 0, end, height])];
  const [least, most] = [Math.min(...counted), Math.max(...counted)].map(along);
  if (least !== undefined && most !== undefined && most > least)
    shapes.push({ ...box("spread", "none", [least, 0, most, height]), fill: { kind: "hatch", lean: 45, spacing: 1.1 } });
  const labels: Label[] = [
    {
      id: "start",
      lines: [{ text: { id: "drawing-ruler-start", with: { value: startText(from, unit) } }, ink: "quiet" }],
      at: [start, height / 2],
      place: "here",
      anchor: "end",
      offset: [-0.5, 0],
    },
  ];
  for (const [i, { value, sources, beside }] of marks.entries()) {
    const at = along(value);
    shapes.push(line(`limit-${i + 1}`, beside ? "dashed" : "outline", [at, height], [at, -0.8 * height]));
    labels.push({
      id: `limit-${i + 1}-name`,
      lines: sources.map((text, line) => ({
        text,
        ...(line === 0 ? { reading: shown(value, false) } : {}),
        ink: beside ? ("quiet" as const) : ("worked" as const),
      })),
      at: [at, -0.8 * height],
      place: "under",
      anchor: "start",
    });
  }
  if (house) {
    const at = along(house.value);
    shapes.push(line("house", "outline", [at, 0], [at, 3.6 * height]), pennant(at, height));
    const text: Says = { id: "drawing-ruler-house", with: { by: house.setBy } };
    labels.push({
      id: "house-name",
      lines: [{ reading: shown(house.value, true), text, ink: "worked", bold: true }],
      at: [at, 3.6 * height],
      place: "over",
      anchor: "start",
    });
  }
  if (measured) {
    const at = along(measured.value);
    const [low, high] = reachOf(measured).map((value) => along(Math.max(from, value))) as [number, number];
    shapes.push(
      ...(high > low ? [box("measured-reach", "pencil", [low, 1.75 * height, high, 2.05 * height], true)] : []),
      pointer(at, height),
    );
    labels.push({
      id: "measured-name",
      lines: [{ reading: shown(measured.value, true), text: { id: "drawing-ruler-measured" }, ink: "measured" }],
      at: [at, 2.6 * height],
      place: "over",
      anchor: "start",
    });
  }
  return {
    ...head,
    description: describe(ruler, among),
    parts: [{ id: "ruler", called: title }],
    shapes,
    dimensions: [],
    balloons: [],
    labels,
    notes: [],
    toScale: false,
    legible: { length: end - start, sizes: 10 },
  };
}

/** Limits of one value are one mark that bears all their names; it counts when one of them does. */
function merged({
  limits,
}: LimitRuler): readonly { readonly value: number; readonly sources: readonly Text[]; readonly beside: boolean }[] {
  const marks: { value: number; sources: Text[]; beside: boolean }[] = [];
  for (const { value, source, beside = false } of [...limits].sort((a, b) => a.value - b.value)) {
    const last = marks.at(-1);
    if (last === undefined || value - last.value > same) marks.push({ value, sources: [source], beside });
    else {
      if (!last.sources.some((one) => JSON.stringify(one) === JSON.stringify(source))) last.sources.push(source);
      last.beside &&= beside;
    }
  }
  return marks;
}

function reachOf({ value, standardUncertainty: u }: NonNullable<LimitRuler["measured"]>): readonly [number, number] {
  return [Math.max(0, value - coverage * u), value + coverage * u];
}

/** The ruler begins at nought, unless all of it would then crowd at its far end. */
function endsOf(values: readonly number[]): readonly [number, number] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (least < 0.55 * most) return [0, 1.06 * most];
  const room = Math.max(0.5 * (most - least), 0.06 * most);
  return [least - room, most + 0.4 * room];
}

function startText(from: number, unit: LimitRuler["unit"]) {
  return from === 0 ? "0" : unit === "m" ? { value: from, kind: "length", decimals: 1 } : String(Math.round(from));
}

function describe({ limits, house, measured, unit, title }: LimitRuler, among: number): readonly Says[] {
  const shown = (value: number) => (unit === "m" ? { value, kind: "length", decimals: among < 1e-3 ? 3 : 1 } : Math.round(value));
  const values = limits.filter(({ beside }) => beside !== true).map(({ value }) => value);
  return [
    { id: "drawing-says-ruler", with: { what: typeof title === "string" ? title : title.id } },
    ...(measured ? [{ id: "drawing-says-ruler-measured", with: { value: shown(measured.value) } }] : []),
    ...(values.length > 0
      ? [
          {
            id: "drawing-says-ruler-limits",
            with: { count: values.length, low: shown(Math.min(...values)), high: shown(Math.max(...values)) },
          },
        ]
      : []),
    ...(house ? [{ id: "drawing-says-ruler-house", with: { value: shown(house.value), by: house.setBy } }] : []),
  ];
}

function line(id: string, layer: Layer, ...points: readonly Point[]): Shape {
  return { id, part: "ruler", layer, points, closed: false };
}

function box(id: string, layer: Layer, [x0, y0, x1, y1]: Rectangle, solid = false): Shape {
  const points: readonly Point[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  return { id, part: "ruler", layer, points, closed: true, ...(solid ? { fill: { kind: "solid" } } : {}) };
}

/** A pennant at the top of its pole. */
function pennant(at: number, height: number): Shape {
  const points: readonly Point[] = [
    [at, 3.6 * height],
    [at, 2.5 * height],
    [at + 1.5 * height, 3.05 * height],
  ];
  return { id: "house-flag", part: "ruler", layer: "outline", points, closed: true, fill: { kind: "solid" } };
}

/** A pointer that stands on the ruler. */
function pointer(at: number, height: number): Shape {
  const points: readonly Point[] = [
    [at, height],
    [at + 0.55 * height, 2.6 * height],
    [at - 0.55 * height, 2.6 * height],
  ];
  return { id: "measured-mark", part: "ruler", layer: "pencil", points, closed: true, fill: { kind: "solid" } };
}
