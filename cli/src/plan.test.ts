import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ran } from "../../testing/command.ts";

const example = readFileSync(new URL("../../answers/examples/box.yaml", import.meta.url), "utf8");

test("the example box is what the program hands out to fill in, and it has a plan", async () => {
  expect((await ran(["example"])).out).toBe(example);
  const { code, out, err } = await ran(["plan", "-"], example);
  expect(code).toBe(0);
  expect(err).toBe("");
  for (const said of [
    "Stock pump 2",
    "RING SET",
    "joint at 12",
    "196\u00a0mm",
    "LANTERN RING",
    "Prove zero",
    "Turn the shaft one full turn by hand",
    "STOP RULES",
  ]) {
    expect(out).toContain(said);
  }
});

test("the turning shaft is minded before anything is measured, and a caution stands above the step it guards", async () => {
  const { out } = await ran(["plan", "-"], example);
  expect(out.indexOf("The shaft turns.")).toBeLessThan(out.indexOf("THE BOX AS MEASURED"));
  expect(out.indexOf("! Flush, quench and grease lines")).toBeLessThan(out.indexOf("Flush line closed, locked and bled"));
  expect(out.indexOf("! Smoke, steam or squeal")).toBeLessThan(out.indexOf("Operator starts it"));
});

test("no sentence on the page is left with a hole, an id or a number that is none", async () => {
  for (const units of ["metric", "inch"]) {
    const { out } = await ran(["plan", "-", "--units", units, "--workings"], example);
    expect(out).not.toMatch(/\{\w+\}|undefined|NaN|Infinity|\[object/u);
    for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
  }
});

test("with its workings every number shows formula and source, and whether it was read", async () => {
  const { out } = await ran(["plan", "-", "--workings"], example);
  expect(out).toContain("s = (D - d) / 2");
  expect(out).toMatch(/\[.*Mobley.*\]/u);
  expect(out).toContain("from memory");
  expect(out).toContain("taken, may be");
});

test("in inches the cut is read off a rule to the sixteenth", async () => {
  const { out } = await ran(["plan", "-", "--units", "inch"], example);
  expect(out).toMatch(/each ring\s+7 (?:11\/16|3\/4)\u00a0in/u);
});

test("when to repack is said once, beside the lantern ring, in the whole millimetres of a drill shank", async () => {
  for (const units of ["metric", "inch"]) {
    const { out } = await ran(["plan", "-", "--units", units], example);
    expect(out.match(/Repack when a drill shank of \d+\u00a0mm/gu)?.length).toBe(1);
    expect(out.match(/Repack when a drill shank/gu)?.length).toBe(1);
  }
});

test("the same plan as data is one document on standard output", async () => {
  const { code, out, err } = await ran(["plan", "-", "--json"], example);
  expect(code).toBe(0);
  expect(err).toBe("");
  const reply = JSON.parse(out) as { ok: boolean; answer: { parts: object } };
  expect(reply.ok).toBe(true);
  expect(Object.keys(reply.answer.parts)).toEqual(expect.arrayContaining(["section", "ring-set", "ring-cut", "gland-load", "fit-steps"]));
});

test("each drawing that is asked for is written, and said where", async () => {
  const { code, err, files } = await ran(
    ["plan", "-", "--drawing", "a.svg", "--clock", "b.svg", "--strip", "c.svg", "--push", "d.svg"],
    example,
  );
  expect(code).toBe(0);
  expect([...files.keys()]).toEqual(["a.svg", "b.svg", "c.svg", "d.svg"]);
  for (const [name, svg] of files) {
    expect(svg).toMatch(/^<svg /u);
    expect(err).toContain(name);
  }
});

test("a box of which only the motion is known is planned, drawn nowhere, and says what is missing", async () => {
  const { code, out, err, files } = await ran(["plan", "-", "--drawing", "a.svg"], "motion: turning\n");
  expect(code).toBe(0);
  expect(files.size).toBe(0);
  expect(err).toContain("shaft, bore or the ring set is not known");
  expect(out).toContain("NOT KNOWN");
});

test("a shaft larger than its bore is refused in words that name field, given and allowed", async () => {
  const { code, out, err } = await ran(["plan", "-"], "motion: turning\nshaft: 75 mm\nbore: 50 mm\n");
  expect(code).toBe(3);
  expect(out).toBe("");
  expect(err).toContain("bore");
  expect(err).toContain("50 mm");
});

test("a malformed box, a wrong word and a wrong unit are told apart from a refusal", async () => {
  for (const input of [
    "motion: turning\nshaft: 50\n",
    "motion: sideways\n",
    "motion: turning\nshaft: 50 bar\n",
    "shaft: [",
    "",
    "just words",
    "motion: turning\nsahft: 50 mm\n",
  ]) {
    const { code, out, err } = await ran(["plan", "-"], input);
    expect(code, input).toBe(2);
    expect(out).toBe("");
    expect(err.length).toBeGreaterThan(10);
    expect(err).not.toMatch(/\n\s+at /u);
  }
  expect((await ran(["plan"])).code).toBe(2);
  expect((await ran(["plan", "-", "--colour"], example)).code).toBe(2);
  expect((await ran(["plan", "-", "--units", "cubits"], example)).code).toBe(2);
});

test("a reading that looks ten times too large is asked about, and the plan goes on", async () => {
  const { code, out } = await ran(["plan", "-"], "motion: turning\nshaft: { readings: [50 mm, 500 mm, 50.1 mm] }\nbore: 750 mm\n");
  expect(code).toBe(0);
  expect(out).toMatch(/500\.?0?\u00a0mm/u);
});

test("what looks mistyped stands first, once, with what was typed and what was perhaps meant; and the box is planned", async () => {
  const mistyped = example
    .replace("rotation: 1450 rpm", "rotation: 1450 rad/s")
    .replace("[92 mm]", "[920 mm]")
    .replace("temperature: 45 °C", "temperature: 1130 F")
    .replace("diameter: 6 mm", "diameter: 60 mm");
  const { code, out } = await ran(["plan", "-"], mistyped);
  const page = out.replace(/\s+/gu, " ");
  expect(code).toBe(0);
  const before = page.slice(0, page.indexOf("THE BOX AS MEASURED"));
  for (const asked of [
    "port, diameter reads 60 mm, which few boxes have. Is it 6.00 mm?",
    "temperature reads 1130 F, which few boxes have. Is it 45.0 °C?",
    "rotation reads 1450 rad/s, which few boxes have. Is it 1385 rpm, or 1450 rpm?",
    "depth reads 920 mm, which few boxes have. Is it 92.0 mm?",
  ]) {
    expect(before).toContain(asked);
    expect(page.split(asked)).toHaveLength(2);
  }
  const { out: right } = await ran(["plan", "-"], example);
  expect(right).not.toMatch(/few boxes have|Look at it once more/u);
});

test("a box that cannot be is turned away with what was perhaps meant", async () => {
  const { code, err } = await ran(["plan", "-"], "motion: turning\nshaft: 80 mm\nbore: 75 mm\ndepth: 920 mm\n");
  expect(code).toBe(3);
  expect(err).toMatch(/depth reads 920 mm, which few boxes have\. Is it 92\.0\smm\?/u);
});

test("a card is written as a PDF on the paper asked for, and said where", async () => {
  const { code, err, files } = await ran(["plan", "-", "--card", "card.pdf", "--paper", "letter"], example);
  expect(code).toBe(0);
  expect(err).toContain("Card written to card.pdf.");
  const card = Buffer.from(files.get("card.pdf") ?? "");
  expect(card.subarray(0, 8).toString()).toBe("%PDF-1.7");
  // Letter is 8.5 by 11 in, of 72 points each.
  expect(card.toString("latin1")).toContain("/MediaBox [0 0 612 792]");
  expect((await ran(["plan", "-", "--card", "card.pdf", "--paper", "a5"], example)).code).toBe(2);
});
