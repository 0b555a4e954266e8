import { inUnit, type Length, quantity } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { stockPump, stockPumpMoved, valveStem } from "../gallery/boxes.ts";
import { type BoxDrawing, type Drawing, drawBoxSection } from "../index.ts";
import type { Dimension, Shape } from "../shapes.ts";
import { randomBox } from "../testing/random-box.ts";

const mm = (length: Length): number => inUnit("length", length, "mm");
const span = ({ from, to, side }: Dimension): number => Math.abs(side === "left" || side === "right" ? to[1] - from[1] : to[0] - from[0]);
const shape = (drawing: Drawing, id: string): Shape => {
  const found = drawing.shapes.find((one) => one.id === id);
  if (!found) throw new Error(`nothing drawn is called ${id}`);
  return found;
};
const edges = (drawing: Drawing, id: string): readonly [number, number, number, number] => {
  const points = shape(drawing, id).points;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
};
const near = (actual: number, expected: number) => expect(Math.abs(actual - expected)).toBeLessThan(1e-9);

property("every dimension is as long on the drawing as its figure says", [randomBox], (box) => {
  for (const dimension of drawBoxSection(box).dimensions) near(span(dimension), mm(dimension.states));
});

property("every chain of dimensions closes: its members follow each other and add up to the whole", [randomBox], (box) => {
  const { dimensions } = drawBoxSection(box);
  const chains = new Set(dimensions.flatMap(({ chain }) => (chain === undefined ? [] : [chain])));
  for (const chain of chains) {
    const whole = dimensions.find(({ id }) => id === chain);
    const members = dimensions.filter((one) => one.chain === chain).sort((a, b) => a.from[0] - b.from[0]);
    if (!whole) throw new Error(`no dimension is called ${chain}`);
    near(members[0]?.from[0] ?? Number.NaN, whole.from[0]);
    near(members.at(-1)?.to[0] ?? Number.NaN, whole.to[0]);
    for (const [i, member] of members.entries()) if (i > 0) near(member.from[0], members[i - 1]?.to[0] ?? Number.NaN);
    near(
      members.reduce((sum, { states }) => sum + mm(states), 0),
      mm(whole.states),
    );
  }
});

test("the stock pump has its chains: set and entry make the depth, entry and gland gap make the nose", () => {
  const { dimensions } = drawBoxSection(stockPump);
  const stated = Object.fromEntries(dimensions.map(({ id, states }) => [id, mm(states)]));
  near(stated.set ?? 0, 78.5);
  near(stated.entry ?? 0, 13.5);
  near((stated.set ?? 0) + (stated.entry ?? 0), 92);
  near((stated.entry ?? 0) + (stated["gland-gap"] ?? 0), 30);
  expect(dimensions.filter(({ chain }) => chain === "depth").map(({ id }) => id)).toEqual(["set", "entry"]);
  expect(dimensions.filter(({ chain }) => chain === "nose").map(({ id }) => id)).toEqual([]);
});

property("what is drawn is what was stated: rings, bore, shaft, depth, lantern ring, port and follower", [randomBox], (given) => {
  const { moved: _, ...box } = given;
  const drawing = drawBoxSection(box);
  const [shaft, bore] = [mm(box.shaft.value) / 2, mm(box.bore.value) / 2];
  for (const [i, part] of box.parts.entries()) {
    const id = `${part.kind}-${part.number ?? `at-${i + 1}`}`;
    const upper = edges(drawing, `${id}-upper`);
    const lower = edges(drawing, `${id}-lower`);
    for (const [at, expected] of [mm(part.from), shaft, mm(part.to), bore].entries()) near(upper[at] ?? Number.NaN, expected);
    for (const [at, expected] of [mm(part.from), -bore, mm(part.to), -shaft].entries()) near(lower[at] ?? Number.NaN, expected);
  }
  if (box.lantern) {
    near(edges(drawing, "lantern-upper-throat")[0], mm(box.lantern.from));
    near(edges(drawing, "lantern-upper-gland")[2], mm(box.lantern.to));
    const window = edges(drawing, "lantern-upper-outside");
    near(window[2] - window[0], mm(box.lantern.window));
  }
  near(edges(drawing, "housing-lower-outline")[2], mm(box.depth.value));
  if (box.port) {
    const [at, radius] = [mm(box.port.fromThroat.value), mm(box.port.diameter.value) / 2];
    near(edges(drawing, "housing-upper")[2], at - radius);
    near(edges(drawing, "housing-upper-gland")[0], at + radius);
  }
  if (box.follower?.gap)
    near(Math.max(...shape(drawing, "follower-upper").points.map(([x]) => x)) - flangeOf(drawing), flangeThickness(drawing));
  if (box.follower?.gap) near(flangeOf(drawing) - mm(box.depth.value), mm(box.follower.gap.value));
  if (box.studs) near(edges(drawing, "stud-upper-shank")[3] - edges(drawing, "stud-upper-shank")[1], mm(box.studs.diameter));
});

/** Where the flange meets the nose: the corner of the follower's outline that is neither end. */
function flangeOf(drawing: Drawing): number {
  const xs = [...new Set(shape(drawing, "follower-upper").points.map(([x]) => x))].sort((a, b) => a - b);
  return xs[1] ?? Number.NaN;
}

function flangeThickness(drawing: Drawing): number {
  const [x0, , x1] = edges(drawing, "follower-upper");
  return x1 - x0 - (flangeOf(drawing) - x0);
}

property("both halves are the same, mirrored at the centre line", [randomBox], (box) => {
  const drawing = drawBoxSection(box);
  for (const { id } of drawing.parts) {
    if (!/^(?:end-)?ring|spacer|bush|follower/u.test(id)) continue;
    const [, low, , high] = edges(drawing, `${id}-upper`);
    const [, lowest, , highest] = edges(drawing, `${id}-lower`);
    near(low, -highest);
    near(high, -lowest);
  }
});

test("the parts are there: throat shoulder, sleeve, numbered rings, lantern ring with lands and hole, port, follower, studs and nuts", () => {
  const drawing = drawBoxSection(stockPump);
  expect(drawing.parts.map(({ id }) => id)).toEqual([
    "housing",
    "shaft",
    "sleeve",
    "ring-1",
    "ring-2",
    "ring-3",
    "ring-4",
    "ring-5",
    "lantern",
    "follower",
    "port",
    "stud",
  ]);
  // The throat shoulder: the box wall comes in from the bore to the throat at x = 0.
  const shoulder = shape(drawing, "housing-lower").points.filter(([x]) => x === 0);
  expect(shoulder.map(([, y]) => y).sort((a, b) => a - b)[0]).toBe(-37.5);
  // The H: two lands over the whole section, a web between them, a hole through the web.
  for (const id of ["lantern-upper-throat", "lantern-upper-gland"]) expect(shape(drawing, id).points).toHaveLength(8);
  const [hole] = [edges(drawing, "lantern-upper-hole")];
  expect(hole[0]).toBeGreaterThan(27.5);
  expect(hole[2]).toBeLessThan(38.5);
  // Ring 1 is at the throat, and numbers grow towards the gland.
  const numbers = drawing.balloons.filter(({ at }) => at[1] > 0).sort((a, b) => a.at[0] - b.at[0]);
  expect(numbers.map(({ text }) => text)).toEqual(["1", "2", "3", "4", "5"]);
  for (const half of ["upper", "lower"]) for (const what of ["shank", "nut", "end", "axis"]) shape(drawing, `stud-${half}-${what}`);
  expect(drawing.labels.map(({ id }) => id)).toEqual(["port-label", "studs-label", "wet-end", "air-side"]);
  const diameters = drawing.dimensions.filter(({ diameter }) => diameter).map(({ id, states }) => [id, mm(states)] as const);
  expect(Object.fromEntries(diameters)).toEqual({ bore: 75, shaft: 43, sleeve: 50 });
});

test("the follower is hatched the other way from the box, and the shaft and studs are not hatched at all", () => {
  const { shapes } = drawBoxSection(stockPump);
  const lean = (part: string) =>
    new Set(shapes.flatMap(({ part: of, fill }) => (of === part && fill?.kind === "hatch" ? [fill.lean] : [])));
  expect(lean("housing")).toEqual(new Set([45]));
  expect(lean("follower")).toEqual(new Set([-45]));
  expect(lean("stud")).toEqual(new Set());
  expect(shapes.filter(({ id, fill }) => /^shaft-(?:upper|lower)$/u.test(id) && fill)).toEqual([]);
});

property("two hatched parts that touch differ in the way or the spacing of their lines", [randomBox], (box) => {
  const drawing = drawBoxSection(box);
  const hatched = drawing.shapes.filter(({ fill }) => fill?.kind === "hatch" && fill !== undefined);
  for (const a of hatched) {
    for (const b of hatched) {
      if (a.part === b.part || a.fill?.kind !== "hatch" || b.fill?.kind !== "hatch") continue;
      const [p, q] = [edges(drawing, a.id), edges(drawing, b.id)];
      const touching = p[0] <= q[2] + 1e-9 && q[0] <= p[2] + 1e-9 && p[1] <= q[3] + 1e-9 && q[1] <= p[3] + 1e-9;
      if (touching) expect([a.id, b.id, a.fill.lean === b.fill.lean && a.fill.spacing === b.fill.spacing]).toEqual([a.id, b.id, false]);
    }
  }
});

test("a measured size is blue and one that was worked out is ink", () => {
  const ink = Object.fromEntries(drawBoxSection(stockPump).dimensions.map((one) => [one.id, one.ink]));
  expect(ink).toMatchObject({
    bore: "measured",
    depth: "measured",
    nose: "measured",
    set: "worked",
    entry: "worked",
    "gland-gap": "worked",
  });
});

test("what nobody measured is drawn but not dimensioned, and the description says so", () => {
  const drawing = drawBoxSection(valveStem);
  const said = drawing.description.map(({ id }) => id);
  expect(said).toContain("drawing-convention-wall");
  expect(said).toContain("drawing-convention-studs");
  expect(said).not.toContain("drawing-convention-clearance");
  expect(drawing.dimensions.map(({ id }) => id).sort()).toEqual(["bore", "depth", "entry", "gland-gap", "nose", "set", "stem"]);
});

property("as the gland moves on, the lantern ring goes along by its share and the nose by all of it", [randomBox], (box) => {
  const { moved, ...still } = box;
  if (!moved) return;
  const [before, after] = [drawBoxSection(still), drawBoxSection(box)];
  near(edges(before, "follower-upper")[0] - edges(after, "follower-upper")[0], mm(moved.gland));
  if (box.lantern) near(edges(before, "lantern-upper-throat")[0] - edges(after, "lantern-upper-throat")[0], mm(moved.gland) * moved.share);
  // Nothing is lost or laid over: the rings still follow each other without a gap.
  const set = [
    ...after.shapes.filter(({ id }) => /^(?:(?:end-)?ring|spacer|bush)-.*-upper$/u.test(id)).map(({ id }) => edges(after, id)),
  ].sort((a, b) => a[0] - b[0]);
  for (const [i, one] of set.entries()) {
    const width = box.lantern ? mm(box.lantern.to) - mm(box.lantern.from) : 0;
    const gap = i === 0 ? one[0] : one[0] - (set[i - 1]?.[2] ?? 0);
    expect(Math.min(Math.abs(gap), Math.abs(gap - width))).toBeLessThan(1e-9);
  }
});

test("a moved gland leaves no figure in blue that is no longer the measured one", () => {
  const ink = Object.fromEntries(
    drawBoxSection({ ...stockPumpMoved, follower: { gap: { value: quantity("length", 16.5, "mm"), by: "measured" } } }).dimensions.map(
      (one) => [one.id, one.ink],
    ),
  );
  expect(ink["gland-gap"]).toBe("worked");
});

test("the port is said to be as the answer found it, in red when it wants a hand", () => {
  for (const [state, words, ink] of [
    ["open", "port open", "worked"],
    ["part-closed", "port part closed", "attention"],
    ["shut", "port shut", "attention"],
  ] as const) {
    const port = stockPump.port as NonNullable<BoxDrawing["port"]>;
    const label = drawBoxSection({ ...stockPump, port: { ...port, state } }).labels.find(({ id }) => id === "port-label");
    const line = label?.lines.at(-1);
    expect(line && typeof line.text !== "string" ? say(line.text) : "").toBe(words);
    expect(line?.ink).toBe(ink);
  }
});

test("a box that cannot be is not drawn; the drawing says why", () => {
  const length = (value: number) => ({ value: quantity("length", value, "mm"), by: "measured" }) as const;
  const ring = (from: number, to: number) => ({
    kind: "ring" as const,
    number: 1,
    from: quantity("length", from, "mm"),
    to: quantity("length", to, "mm"),
  });
  const cases: readonly (readonly [Partial<BoxDrawing>, string])[] = [
    [{ bore: length(50) }, "drawing-cannot-bore"],
    [{ shaft: length(Number.NaN) }, "drawing-cannot-size"],
    [{ depth: length(Number.POSITIVE_INFINITY) }, "drawing-cannot-size"],
    [{ depth: length(-92) }, "drawing-cannot-size"],
    [{ sleeve: { bore: length(50) } }, "drawing-cannot-sleeve"],
    [{ parts: [ring(0, 12), ring(10, 22)] }, "drawing-cannot-overlap"],
    [{ parts: [ring(0, Number.NaN)] }, "drawing-cannot-overlap"],
    [
      { lantern: { from: quantity("length", 25, "mm"), to: quantity("length", 41, "mm"), window: quantity("length", 20, "mm") } },
      "drawing-cannot-lantern",
    ],
    [{ port: { fromThroat: length(91), diameter: length(6) } }, "drawing-cannot-port"],
    [{ moved: { gland: quantity("length", 40, "mm"), share: 0.4 } }, "drawing-cannot-move"],
    [{ moved: { gland: quantity("length", 1, "mm"), share: Number.NaN } }, "drawing-cannot-move"],
    [{ follower: { nose: length(10) } }, "drawing-cannot-reach"],
  ];
  for (const [change, id] of cases) {
    const drawing = drawBoxSection({ ...stockPump, ...change });
    expect(drawing.shapes).toEqual([]);
    expect(drawing.notes.map(({ text }) => (typeof text === "string" ? text : text.id))).toContain(id);
  }
});

test("a nose that was measured otherwise than entry and gap leave for it is said in red", () => {
  const drawing = drawBoxSection({
    ...stockPump,
    follower: {
      gap: { value: quantity("length", 16.5, "mm"), by: "measured" },
      nose: { value: quantity("length", 32, "mm"), by: "measured" },
    },
  });
  expect(drawing.notes).toMatchObject([{ id: "nose-differs", ink: "attention" }]);
});
