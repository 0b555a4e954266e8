import { readAllFacts } from "@ringwright/data";
import { type Bodies, type Entry, type EntryKind, type Json, kinds, readEntry, uuidv7 } from "@ringwright/logbook";
import { expect, test } from "vitest";
import { surveyFields } from "../../../testing/survey-fields.ts";
import { fieldName } from "../../parts/field-value.ts";
import { wordsIn } from "../../parts/words.ts";
import { type Around, entryInWords } from "./entry-in-words.ts";

const id = (count: number) => uuidv7(1_800_000_000_000 + count, new Uint8Array(10).fill(count));
const words = wordsIn("metric");
const mm = (value: number) => ({ value: value / 1000, unit: "m", typed: `${value} mm` });

/** One body of each kind, with every member that it may have. */
const bodies: { readonly [Kind in EntryKind]: Bodies[Kind] } = {
  "box-described": { field: "release", value: "not-allowed" },
  measured: { field: "bore", value: { readings: [mm(75), mm(75.1)], how: "bore-gauge" } },
  "rings-chosen": { field: "set.style", value: "ramie-flax-ptfe" },
  "fit-step": {
    job: id(2),
    step: "step-old-rings-throat-side",
    found: 3,
    expected: 4,
    blanks: { "rings-left-in": "1" },
    cannot: "ring-broken",
  },
  started: { job: id(2) },
  reading: { what: "drip", state: "running", value: 34 },
  adjustment: { flats: [-1, -1], why: "ran warm" },
  "old-rings": { rings: [{}, {}], note: "glazed" },
  bridge: { job: id(2), step: "step-runout", why: "gauge not here", owner: "day fitter", until: "2031-04-30" },
  photo: { hash: "a".repeat(64), type: "image/jpeg", bytes: 51_200, caption: "sleeve" },
  note: { text: "Port was half blocked." },
  "limit-set": { item: "runout", value: mm(0.1), setBy: "planner", why: "slow pump" },
  "card-issued": { card: id(3), paper: "a4", survey: {}, figures: {} },
  signed: { entry: id(1), meaning: "looked-over", name: "N. Fitter" },
  "crossed-out": { entry: id(1), why: "wrong box" },
  linked: { to: id(4), as: "moved-to" },
};

function entry(kind: string, body: object, kindVersion = 1): Entry {
  const at = { device: "2031-04-30T14:05:09.120+02:00", serverOffsetMs: null };
  const made = {
    v: 1,
    id: id(1),
    site: id(5),
    box: id(6),
    kind,
    kindVersion,
    at,
    by: "owner",
    device: id(7),
    seq: 1,
    prev: null,
    after: [],
    body,
    method: null,
  };
  const read = readEntry(made as Json);
  if (!read.ok) throw new Error(`${kind}: ${read.fault.at}`);
  return read.entry;
}

const about = entry("measured", { field: "shaft", value: mm(50) });
const around: Around = { words, steps: new Map(), other: (wanted) => (wanted === about.id ? about : undefined) };
const whole = (one: Entry) => {
  const { kind, what, value, beneath } = entryInWords(one, around);
  return [kind, what, value, ...beneath].join(" | ");
};
/** Ids are words joined by strokes or dots, or hexadecimal: no sentence of ours has such. */
const rawId =
  /[0-9a-f]{8}-[0-9a-f]{4}|\b[a-z]+-[a-z]+-[a-z-]+\b|\b(?:set|service|port|condition|hazards)\.[a-z]|\{|\}|undefined|\bentry-|\bfield-/u;

test("an entry of every kind is said in words, none of it as an id", () => {
  expect(Object.keys(bodies).sort()).toEqual(Object.keys(kinds).sort());
  for (const [kind, body] of Object.entries(bodies)) {
    const said = whole(entry(kind, body));
    expect(said.replace("ramie-flax", ""), kind).not.toMatch(rawId);
    expect(entryInWords(entry(kind, body), around).what, kind).not.toBe("");
  }
});

test("what was typed is shown as it was typed, a don't know as what it is", () => {
  expect(whole(entry("measured", bodies.measured))).toContain("75 mm, 75.1 mm, by bore gauge");
  expect(entryInWords(entry("measured", { field: "service.pH", value: null }), around).value).toBe("don't know");
  expect(entryInWords(entry("box-described", { field: "name", value: "stuck" }), around).value).toBe("stuck");
  expect(entryInWords(entry("box-described", bodies["box-described"]), around).value).toBe("No");
});

test("rings that were left in, what was expected, and why a step was not done are all said", () => {
  const said = whole(entry("fit-step", bodies["fit-step"]));
  for (const part of ["3", "expected 4", "old rings left in the box: 1", "not done: ring broke"]) expect(said).toContain(part);
});

test("an entry of a newer program is shown as such and not guessed at", () => {
  for (const one of [entry("weighed", { stone: 4 }), entry("note", { text: "x" }, 2)]) {
    expect(entryInWords(one, around)).toEqual({
      kind: "Written by a newer program",
      what: "This program cannot read it. It is kept and passed on as it is.",
      value: "",
      beneath: [],
    });
  }
});

test("every field of a box, every step and every reason has a name", () => {
  for (const field of surveyFields) expect(fieldName(field, words), field).not.toMatch(/[.{}]|[a-z][A-Z](?!$)/u);
  const { fit, runIn } = readAllFacts();
  const steps = [...Object.values(fit.groups), ...Object.values(runIn.groups)].flat();
  expect(steps.length).toBeGreaterThan(80);
  for (const { id: step, each, at } of steps) {
    const name = `${step}${each === undefined ? "" : "-3"}${at === undefined ? "" : "-24h"}`;
    const { what } = entryInWords(entry("fit-step", { job: id(2), step: name, found: true }), around);
    expect(what, name).not.toMatch(/step-|run-|\{|\}/u);
    if (each !== undefined) expect(what, name).toContain("3");
  }
});
