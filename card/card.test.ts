import { planInWords } from "@ringwright/words/plan";
import fc from "fast-check";
import { expect, test } from "vitest";
import { propertyInTime } from "../testing/property.ts";
import { example, issue, longBox, planOf, type SurveyFile, stem, written } from "./testing/issue.ts";
import { bare, type ReadPdf, readPdf, type Stroke } from "./testing/read-pdf.ts";

const horizontal = ({ from, to }: Stroke) => Math.abs(from[1] - to[1]) < 1e-3;
const lengthOf = ({ from, to }: Stroke) => Math.hypot(to[0] - from[0], to[1] - from[1]);
const textOf = ({ pages }: ReadPdf) => pages.map(({ text }) => text).join("");

/** ISO 216 and ASME Y14.1, millimetres. */
const sizes = { a4: [210, 297], letter: [215.9, 279.4] } as const;

test.each(["a4", "letter"] as const)("on %s every page has the paper's size, its number, the box's name and who decides", async (paper) => {
  const { pages } = await readPdf(await issue(example, { paper }));
  expect(pages.length).toBeGreaterThan(5);
  for (const [i, { width, height, text }] of pages.entries()) {
    expect(width).toBeCloseTo(sizes[paper][0], 2);
    expect(height).toBeCloseTo(sizes[paper][1], 2);
    expect(text).toContain(bare(`page ${i + 1} of ${pages.length}`));
    expect(text).toContain(bare("Stock pump 2, coupling-side box"));
    expect(text).toContain(bare("Local rules and licensed people decide."));
    expect(text).toContain("2026-03-0114:05+01:00");
  }
});

test("A4 and Letter have the same words on the same pages", async () => {
  const [a4, letter] = await Promise.all((["a4", "letter"] as const).map(async (paper) => readPdf(await issue(example, { paper }))));
  expect(a4?.pages.map(({ text }) => text)).toEqual(letter?.pages.map(({ text }) => text));
});

test.each([
  ["metric", 100, "100mm"],
  ["inch", 4 * 25.4, "4in"],
] as const)("the check bar in %s measures what it says within 0.05 mm", async (system, length, label) => {
  const { pages } = await readPdf(await issue(example, { system }));
  const bars = pages[0]?.strokes.filter(
    (stroke) => horizontal(stroke) && Math.abs(stroke.width - 0.25) < 0.01 && Math.abs(lengthOf(stroke) - length) < 1,
  );
  const ends = pages[0]?.strokes.filter((stroke) => Math.abs(lengthOf(stroke) - 3.2) < 0.01 && stroke.from[0] === stroke.to[0]);
  expect(bars?.length).toBe(1);
  expect(Math.abs(lengthOf(bars?.[0] as Stroke) - length)).toBeLessThan(0.05);
  expect(ends?.map(({ from }) => from[0]).sort((a, b) => a - b)).toEqual(
    [bars?.[0]?.from[0], bars?.[0]?.to[0]].map((x) => expect.closeTo(x ?? 0, 2)),
  );
  expect(pages[0]?.text).toContain(`Measurethebar:${label}`);
});

test("the box stands at the scale that is printed: its bore of 75 mm is 37.5 mm on paper at 1:2", async () => {
  const [first] = (await readPdf(await issue(example))).pages;
  expect(first?.text).toContain("Boxinsection,1:2");
  const outlines =
    first?.strokes.filter((stroke) => horizontal(stroke) && Math.abs(stroke.width - 0.5) < 0.01 && lengthOf(stroke) > 40) ?? [];
  const extensions = first?.strokes.filter((stroke) => horizontal(stroke) && Math.abs(stroke.width - 0.25) < 0.01) ?? [];
  const ends = ({ from, to }: Stroke) => [from[0], to[0]].sort((a, b) => a - b);
  const level = (one: Stroke, other: Stroke) => ends(one).every((x, i) => Math.abs(x - (ends(other)[i] ?? 0)) < 0.01);
  const apart = (strokes: readonly Stroke[]) =>
    strokes.flatMap((one) => strokes.filter((other) => level(one, other)).map((other) => other.from[1] - one.from[1]));
  // The extension lines of the bore, and the outlines of a 49.97 mm sleeve.
  expect(Math.min(...apart(extensions).map((distance) => Math.abs(distance - 37.5)))).toBeLessThan(0.05);
  expect(Math.min(...apart(outlines).map((distance) => Math.abs(distance - 49.97 / 2)))).toBeLessThan(0.05);
});

test("the first page stands by itself: what needs a hand, set, cuts, joints, lantern depth, when to repack", async () => {
  const [first] = (await readPdf(await issue(example))).pages;
  for (const said of [
    "Needs a hand before this box is packed",
    "The flush port begins to close after",
    "The shaft turns. Guard on",
    "Joint clock",
    "depth gauge on the lantern ring51.6 mm",
    "Repack when a drill shank of 8 mm no longer goes into the gland gap",
    "Cut 5 rings of 12.5 mm on a 50.0 mm bar",
    "each ring196 mm",
    "ring 3",
    "79.8 mm",
  ])
    expect(first?.text).toContain(bare(said));
});

test.each([
  ["a pump", example, "metric"],
  ["a pump in inches", example, "inch"],
  ["twelve rings", longBox, "metric"],
  ["a stem", stem, "metric"],
] as const)("%s: every step is on the card, whole, on one page, directly under the cautions that guard it", async (_, survey, system) => {
  const { pages } = await readPdf(await issue(survey, { system }));
  const steps = planInWords(planOf(survey), system).groups.flatMap((group) => group.steps);
  expect(steps.length).toBeGreaterThan(20);
  expect(steps.some(({ cautions }) => cautions.length > 1)).toBe(true);
  for (const { cautions, number, bridge, text, hints, blanks } of steps) {
    const guarded = bare(`${cautions.map((caution) => `!${caution}`).join("")}${number}${bridge ? "" : "■"}${text}`);
    const page = pages.find((one) => one.text.includes(guarded));
    expect(page, guarded).toBeDefined();
    for (const said of [...hints, ...blanks]) expect(page?.text).toContain(bare(said));
  }
});

test("what is signed is the packing, not a start", async () => {
  const all = textOf(await readPdf(await issue(example)));
  expect(all).toContain(bare("Packing work done; not permission to start."));
  for (const who of ["packed by", "looked over by", "handed to"]) expect(all).toContain(bare(who));
});

test("a box of which only the motion is known has a card that names what to measure, with room to write it", async () => {
  const { pages } = await readPdf(await issue({ motion: "turning" }));
  for (const said of ["No drawing: shaft, bore or the ring set is not known", "Not known: fill in by hand", "would settle"])
    expect(pages[0]?.text).toContain(bare(said));
  const lines = pages[0]?.strokes.filter((stroke) => horizontal(stroke) && Math.abs(lengthOf(stroke) - 44) < 0.01);
  expect(lines?.length).toBe(planOf({ motion: "turning" }).value.gaps.length);
});

test("it is a tagged document in its language with a title, all of it lines and text, the same bytes each time", async () => {
  const bytes = await issue(example);
  const { title, language, tagged, pages } = await readPdf(bytes);
  expect([title, language, tagged]).toEqual(["Stuffing box card: Stock pump 2, coupling-side box", "en", true]);
  for (const { operators } of pages) expect([...operators].filter((name) => /image|shading/iu.test(name))).toEqual([]);
  expect(written(bytes)).toContain("/Alt");
  expect(Buffer.from(await issue(example)).equals(bytes)).toBe(true);
});

test("a time that is none, or a link too long to scan, is refused as a mistake of the caller's", async () => {
  await expect(issue(stem, { issued: { when: "yesterday", version: "0.1.0" } })).rejects.toThrow(RangeError);
  const boxLink = `https://box.invalid/${"x".repeat(300)}`;
  await expect(issue(stem, { issued: { when: "2026-03-01T14:05:00Z", version: "0.1.0", boxLink } })).rejects.toThrow(RangeError);
});

test("sources are printed with how each was seen", async () => {
  const survey = planOf(example);
  const all = textOf(await readPdf(await issue(example)));
  const { sources } = planInWords(survey, "metric");
  expect(sources.length).toBeGreaterThan(20);
  for (const { title, seen } of sources) expect(all).toContain(bare(`${title} (${seen})`));
  expect(all).toContain(bare("(from memory)"));
});

const fields = Object.keys(example).filter((name) => name !== "motion");

propertyInTime(
  "whatever was measured, of whatever moves: a card without a hole, a claim or a missing glyph, and no drip to count for a stem",
  [
    fc.subarray(fields),
    fc.constantFrom("turning", "stroking", "rising-stem", "quarter-turn-stem", "slow-agitator"),
    fc.constantFrom("metric" as const, "inch" as const),
    fc.constantFrom("a4" as const, "letter" as const),
  ],
  async (kept, motion, system, paper) => {
    const survey: SurveyFile = Object.fromEntries([["motion", motion], ...kept.map((name) => [name, example[name] as SurveyFile[string]])]);
    const bytes = await issue(survey, { system, paper });
    expect(written(bytes)).not.toMatch(/NaN|Infinity|undefined|\[object/u);
    // Glyph 0 is the box that a font draws for a character it lacks.
    for (const [, codes = ""] of written(bytes).matchAll(/<([0-9a-f]+)> -?[\d.]+/gu)) expect(codes.match(/.{4}/gu)).not.toContain("0000");
    const all = textOf(await readPdf(bytes));
    expect(all).not.toContain("□");
    expect(all).not.toMatch(/\{\w+\}/u);
    expect(all).not.toMatch(/\b(?:is|are|now)(?:safe|isolated)\b/iu);
    expect(all).toContain(bare("not permission to start"));
    if (motion.endsWith("stem")) expect(all).not.toMatch(/dropsaminute|publisheddrips|Countthedrip/u);
  },
  "card",
);
