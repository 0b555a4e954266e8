import { english } from "@ringwright/words";
import fc from "fast-check";
import { SaxesParser } from "saxes";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { stockPump } from "../gallery/boxes.ts";
import { joints } from "../gallery/rings.ts";
import { drawBoxSection, drawJointClock, toSvg } from "../index.ts";
import { layOut } from "../sheet/lay-out.ts";
import { randomBox } from "../testing/random-box.ts";

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** Every element of a document, read by an XML parser that knows nothing of ours; a document that is not well formed throws. */
function elementsOf(xml: string): readonly Element[] {
  const parser = new SaxesParser();
  const elements: Element[] = [];
  const open: Element[] = [];
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    const element = { name, attributes: attributes as Record<string, string>, text: "" };
    elements.push(element);
    open.push(element);
  });
  parser.on("text", (text) => {
    for (const element of open) element.text += text;
  });
  parser.on("closetag", () => open.pop());
  parser.write(xml).close();
  return elements;
}

property(
  "any box gives a well-formed document without NaN, the same one each time",
  [randomBox, fc.constantFrom({ width: 90 }, { width: 120, system: "inch" as const, background: "none" as const }, { scale: 0.2 })],
  (box, options) => {
    const svg = toSvg(drawBoxSection(box), options);
    expect(svg).toBe(toSvg(drawBoxSection(structuredClone(box)), options));
    expect(svg).not.toMatch(/NaN|Infinity|undefined|\[object/u);
    const elements = elementsOf(svg);
    const ids = elements.flatMap(({ attributes }) => (attributes.id === undefined ? [] : [attributes.id]));
    expect(new Set(ids).size).toBe(ids.length);
  },
);

property(
  "whatever is typed as a title comes out as it was typed, and breaks nothing",
  [fc.string({ unit: "grapheme", minLength: 1, maxLength: 60 })],
  (title) => {
    const [heading] = elementsOf(toSvg(drawJointClock({ ...joints, title }), { width: 80 })).filter(({ name }) => name === "title");
    expect(heading?.text).toContain(title.replace(/(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu, ""));
  },
);

test("it is one image with a title and a description for those who can't see it", () => {
  const elements = elementsOf(toSvg(drawBoxSection(stockPump)));
  const [svg] = elements;
  expect(svg?.attributes.role).toBe("img");
  for (const id of (svg?.attributes["aria-labelledby"] ?? "").split(" "))
    expect(elements.find(({ attributes }) => attributes.id === id)?.text).toBeTruthy();
  const description = elements.find(({ name }) => name === "desc")?.text ?? "";
  for (const said of ["50.0\u00a0mm", "75.0\u00a0mm", "92.0\u00a0mm", "5 rings", "2 rings are between", "The port is open."])
    expect(description).toContain(said);
  const groups = elements.filter(({ name, attributes }) => name === "g" && attributes.class === "part");
  expect(groups.map(({ attributes }) => attributes.id)).toContain("box-section-ring-3");
});

test("at a scale of 1:2 everything is half as large on paper as it is, and the drawing says so", () => {
  const elements = elementsOf(toSvg(drawBoxSection(stockPump), { scale: 0.5 }));
  const numbers = (id: string) => {
    const d = elements.find(({ attributes }) => attributes.id === `box-section-${id}`)?.attributes.d ?? "";
    return [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const);
  };
  const width = (id: string) => Math.max(...numbers(id).map(([x]) => x)) - Math.min(...numbers(id).map(([x]) => x));
  const height = (id: string) => Math.max(...numbers(id).map(([, y]) => y)) - Math.min(...numbers(id).map(([, y]) => y));
  // Coordinates carry four decimals.
  expect(width("ring-1-upper")).toBeCloseTo(6.25, 3);
  expect(height("ring-1-upper")).toBeCloseTo(6.25, 3);
  expect(width("lantern-upper-throat")).toBeLessThan(8);
  expect(height("stud-upper-shank")).toBeCloseTo(6, 3);
  expect(elements.find(({ attributes }) => attributes.id === "box-section-scale-bar")?.text).toContain("1:2");
});

test("the page is as wide as was asked, and the outline is twice as wide as a thin line", () => {
  const svg = toSvg(drawBoxSection(stockPump), { width: 150 });
  const elements = elementsOf(svg);
  expect(Number.parseFloat(elements[0]?.attributes.width ?? "")).toBeCloseTo(150, 2);
  const pen = (kind: string) => Number(elements.find(({ attributes }) => attributes.class === kind)?.attributes["stroke-width"]);
  expect(pen("outline") / pen("hatch")).toBeCloseTo(2, 3);
  expect(pen("hatch")).toBeGreaterThanOrEqual(0.25);
});

test("inches are shown in inches and millimetres in millimetres, from the same drawing", () => {
  const drawing = drawBoxSection(stockPump);
  const figures = (system: "metric" | "inch") =>
    Object.fromEntries(
      elementsOf(toSvg(drawing, { system, width: 200 })).flatMap(({ name, attributes, text }) =>
        name === "text" ? [[attributes.id, text]] : [],
      ),
    );
  expect(figures("metric")).toMatchObject({
    "box-section-figure-bore": "Ø75.0",
    "box-section-figure-depth": "depth 92",
    "box-section-figure-set": "set 78.5",
  });
  // 75 / 25.4 = 2.95276, 92 / 25.4 = 3.62205, 78.5 / 25.4 = 3.09055
  expect(figures("inch")).toMatchObject({
    "box-section-figure-bore": "Ø2.953",
    "box-section-figure-depth": "depth 3.622",
    "box-section-figure-set": "set 3.091",
  });
});

test("the exported texts are those that were laid out", () => {
  const drawing = drawBoxSection(stockPump);
  const sheet = layOut(drawing, { width: 180, size: 3.8, show: { catalogue: english, system: "metric" }, heading: true });
  const texts = elementsOf(toSvg(drawing, { width: 180, textSize: 3.8 })).filter(({ name }) => name === "text");
  expect(texts.map(({ text }) => text).sort()).toEqual(sheet.placed.texts.map(({ runs }) => runs.map(({ text }) => text).join("")).sort());
});
