import { ask } from "@ringwright/answers";
import { readAllFacts } from "@ringwright/data";
import { Book, readEntryText, standing, surveyOf } from "@ringwright/logbook";
import { expect, test } from "vitest";
import { demoEntries, demoPeople, demoSite } from "./index.ts";

const facts = readAllFacts();
const now = Date.UTC(2031, 4, 5, 9, 30);
const written = demoEntries(now, facts);
const book = new Book();
book.add(written.map(({ entry }) => entry));
const said = (box: string, field: string) => standing(book.state(box).fields.get(field));
const boxNamed = (name: string) => {
  const box = book.boxes().find((one) => String(said(one, "name")).startsWith(name));
  if (!box) throw new Error(`no ${name}`);
  return book.state(box);
};

test("entries are one unbroken chain of one device, each as canonical text, none later than now", () => {
  expect(written.length).toBeGreaterThan(100);
  for (const [index, { entry, text }] of written.entries()) {
    expect(readEntryText(text)).toMatchObject({ ok: true });
    expect(entry).toMatchObject({ site: demoSite, seq: index + 1, device: written[0]?.entry.device });
    expect(Date.parse(entry.at.device)).toBeLessThanOrEqual(now);
  }
  expect(new Set(written.map(({ entry }) => entry.id)).size).toBe(written.length);
});

test("the same moment gives the same bytes; another moment gives the same boxes and people", () => {
  expect(demoEntries(now, facts).map(({ text }) => text)).toEqual(written.map(({ text }) => text));
  const later = new Book();
  later.add(demoEntries(now + 86_400_000, facts).map(({ entry }) => entry));
  expect(later.boxes()).toEqual(book.boxes());
});

test("every box and person says that it is invented; every entry is by one of those people", () => {
  expect(book.boxes()).toHaveLength(7);
  for (const box of book.boxes()) {
    expect(said(box, "name")).toMatch(/\(invented\)$/u);
    expect(said(box, "place")).toBe("Sallowmere board mill (invented)");
    expect(book.state(box).fields.has("zone")).toBe(true);
    expect(book.state(box).fields.has("release")).toBe(true);
    expect(typeof said(box, "datum")).toBe("string");
  }
  for (const { name } of demoPeople) expect(name).toMatch(/\(invented\)$/u);
  const known = new Set(demoPeople.map(({ person }) => person));
  for (const { entry } of written) expect(known).toContain(entry.by);
});

test.each(book.boxes().map((box) => [String(said(box, "name")), box] as const))(
  "%s: the plan has a set of rings and steps, and refuses only what nobody published",
  (_, box) => {
    const reply = ask("plan", surveyOf(book.state(box)), facts);
    expect(reply.ok ? "" : reply.refusal.why).toBe("");
    const { parts, refused } = (reply as unknown as { answer: { parts: Record<string, unknown>; refused: readonly { kind: string }[] } })
      .answer;
    expect(refused.filter(({ kind }) => kind !== "not-known")).toEqual([]);
    expect(Object.keys(parts)).toEqual(expect.arrayContaining(["section", "ring-set", "cautions", "fit-steps"]));
  },
);

test("motions, zones and releases are as different as the work is", () => {
  const all = (field: string) => new Set(book.boxes().map((box) => said(box, field)));
  expect(all("motion")).toEqual(new Set(["turning", "rising-stem", "stroking", "slow-agitator"]));
  expect(all("zone")).toEqual(new Set(["ordinary", "hazardous", null]));
  expect(all("release")).toEqual(new Set(["allowed", "not-allowed", null]));
});

test("one box is open, one packed and not started, one running in, one due", () => {
  const [open] = boxNamed("Stock pump 2").jobs;
  expect(open?.started).toBeUndefined();
  expect(open?.steps.has("step-keep-order")).toBe(true);
  expect(open?.steps.has("step-shaft-size")).toBe(false);
  const [packed] = boxNamed("White-water pump 1").jobs;
  expect(packed?.steps.has("step-turn-by-hand")).toBe(true);
  expect(packed?.steps.has("step-start")).toBe(false);
  expect(packed?.started).toBeUndefined();
  const running = boxNamed("Showerwater pump 3");
  expect(running.jobs[0]?.started).toBeDefined();
  expect(now - Date.parse(running.jobs[0]?.started?.at ?? "")).toBeLessThan(86_400_000);
  expect(running.adjustments.length).toBeGreaterThan(2);
  const due = boxNamed("Seal-water booster 1");
  const gaps = due.readings.filter(({ value }) => value.what === "gland-gap").map(({ value }) => value.value);
  expect(gaps.at(-1)).toMatchObject({ typed: "1 mm" });
  expect(gaps.length).toBeGreaterThan(10);
});
