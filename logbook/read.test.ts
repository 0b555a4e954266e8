import { createHash } from "node:crypto";
import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allOf, boxes, chance, Device, history, idOf, pick, site } from "../testing/devices.ts";
import { property } from "../testing/property.ts";
import {
  canonicalBytes,
  canonicalText,
  type Entry,
  hashOf,
  type Json,
  largestEntry,
  noHead,
  readEntry,
  readEntryText,
  timeOfId,
  writeEntry,
} from "./index.ts";

type Group = { [name: string]: Json };
const good = (): Group => {
  const entry = new Device(1, chance(5)).say("measured", { field: "shaft", value: { value: 0.05, unit: "m", typed: "50 mm" } });
  return JSON.parse(canonicalText(entry)) as Group;
};
const faultOf = (json: Json) => {
  const read = readEntry(json);
  return read.ok ? "accepted" : `${read.fault.id} ${read.fault.at}`;
};
const withBody = (kind: string, body: Json) => faultOf({ ...good(), kind, body });

describe("what is written", () => {
  property("comes back from its text with the same bytes and the same hash, in one unbroken chain", [fc.integer()], (seed) => {
    for (const { has } of history(seed, { devices: 2, steps: 30 }, () => (seed % 1000) * 1e6)) {
      const own = new Map<string, { seq: number; hash: string | null }>();
      for (const { text, entry } of has) {
        const read = readEntryText(text);
        if (!read.ok) throw new Error(read.fault.id);
        expect(read.entry).toEqual(entry);
        expect(read.text).toBe(text);
        const bytes = canonicalBytes(read.entry);
        expect(Buffer.from(bytes).equals(Buffer.from(text, "utf8"))).toBe(true);
        const hash = createHash("sha256").update(text, "utf8").digest("hex");
        expect(hashOf(bytes)).toBe(hash);
        own.set(`${entry.device} ${entry.seq}`, { seq: entry.seq, hash });
      }
      const complete = has.filter(({ entry }) => own.has(`${entry.device} ${entry.seq - 1}`) || entry.seq === 1);
      for (const { entry } of complete) expect(entry.prev).toBe(own.get(`${entry.device} ${entry.seq - 1}`)?.hash ?? null);
    }
  });

  property(
    "has an id later than everything it comes after or crosses out, however wrong the clocks",
    [fc.integer(), fc.integer()],
    (seed, faults) => {
      const random = chance(faults);
      for (const { entry } of allOf(history(seed, { devices: 3, steps: 40 }, () => Math.round((random() - 0.5) * 6e11)))) {
        const crossed = entry.kind === "crossed-out" && entry.kindVersion === 1 ? [String(entry.body.entry)] : [];
        for (const before of [...entry.after, ...crossed]) {
          expect(timeOfId(entry.id)).toBeGreaterThan(timeOfId(before));
          expect(entry.id > before).toBe(true);
        }
      }
    },
  );

  test("keeps what was typed, and turns -0 into the 0 that its text says", () => {
    const tablet = new Device(1, chance(5));
    const entry = tablet.say("measured", { field: "runout", value: { value: -0, unit: "m", typed: "-0 mm" } });
    expect(Object.is((entry.body.value as { value: number }).value, 0)).toBe(true);
    expect((entry.body.value as { typed: string }).typed).toBe("-0 mm");
    expect(readEntry(entry as unknown as Json)).toMatchObject({ ok: true });
  });

  test("is refused aloud when the program hands in a body that is none of its kind", () => {
    const doing = {
      site,
      box: null,
      kind: "note",
      by: "p",
      device: idOf(3),
      at: { device: "2031-04-30T12:00:00Z", serverOffsetMs: null },
      after: [],
    } as const;
    const write = (text: unknown) => () => writeEntry({ ...doing, body: { text } as { text: string } }, noHead, 0, new Uint8Array(10));
    expect(write("drips")).not.toThrow();
    expect(write(7)).toThrow("body.text");
    expect(write("\u0000")).toThrow("entry-text");
    expect(write("\ud800")).toThrow();
    expect(write(Number.NaN)).toThrow();
    expect(write("x".repeat(largestEntry))).toThrow("entry-too-large");
  });
});

describe("what is refused, and where", () => {
  test.each<[string, Json, string]>([
    ["v", 2, "entry-malformed v"],
    ["id", "x", "entry-malformed id"],
    ["site", null, "entry-malformed site"],
    ["box", "", "entry-malformed box"],
    ["kind", "Measured", "entry-malformed kind"],
    ["kindVersion", 0, "entry-malformed kindVersion"],
    ["kindVersion", 1.5, "entry-malformed kindVersion"],
    ["at", { device: "yesterday", serverOffsetMs: null }, "entry-malformed at"],
    ["at", { device: "2031-02-30T12:00:00Z", serverOffsetMs: null }, "entry-malformed at"],
    ["at", { device: "2031-04-30T12:00:00Z" }, "entry-malformed at"],
    ["at", { device: "2031-04-30T12:00:00Z", serverOffsetMs: 0.5 }, "entry-malformed at"],
    ["at", { device: "2031-04-30T12:00:00Z", serverOffsetMs: 0, happened: "then" }, "entry-malformed at"],
    ["at", { device: "2031-04-30T12:00:00Z", serverOffsetMs: 0, zone: "here" }, "entry-malformed at"],
    ["by", "", "entry-malformed by"],
    ["by", "x".repeat(81), "entry-malformed by"],
    ["device", 7, "entry-malformed device"],
    ["seq", 0, "entry-malformed seq"],
    ["seq", 2 ** 53, "entry-malformed seq"],
    ["prev", "00", "entry-malformed prev"],
    ["after", ["x"], "entry-malformed after"],
    ["after", Array.from({ length: 1001 }, () => idOf(1)), "entry-malformed after"],
    ["body", [], "entry-malformed body"],
    ["method", 7, "entry-malformed method"],
    ["method", "x".repeat(201), "entry-malformed method"],
    ["stranger", 1, "entry-malformed stranger"],
    ["body", { field: "shaft", value: "\u0000" }, "entry-text body.value"],
    ["body", { field: "shaft", value: "\udc00" }, "entry-text body.value"],
    ["body", { field: "shaft", value: Number.POSITIVE_INFINITY }, "entry-text body.value"],
    ["body", { field: "shaft", value: -0 }, "entry-text body.value"],
    ["body", { "\ud800": 1 }, "entry-text body"],
  ])("%s: %j", (name, value, fault) => {
    expect(faultOf({ ...good(), [name]: value })).toBe(fault);
  });

  test("every member must be there, and nothing but a group is an entry", () => {
    for (const name of Object.keys(good())) {
      const { [name]: _, ...rest } = good();
      expect(faultOf(rest)).toBe(`entry-malformed ${name}`);
    }
    for (const odd of [null, 1, "x", [], [good()]]) expect(faultOf(odd)).toBe("entry-malformed ");
  });

  test.each<[string, Json, string]>([
    ["measured", { field: "shaft" }, "value"],
    ["measured", { field: "9", value: 1 }, "field"],
    ["measured", { field: "__proto__", value: 1 }, "field"],
    ["measured", { field: "port.__proto__", value: 1 }, "field"],
    ["measured", { field: "\u017f", value: 1 }, "field"],
    ["measured", { field: "a.b.c.d.e", value: 1 }, "field"],
    ["measured", { field: "shaft", value: 1, why: "" }, "why"],
    ["measured", { field: "shaft", value: { value: 1, unit: "m" } }, "value"],
    ["measured", { field: "shaft", value: { how: "caliper" } }, "value"],
    ["measured", { field: "shaft", value: { planes: [1] } }, "value"],
    ["measured", { field: "shaft", value: [1] }, "value"],
    ["fit-step", { job: "x", step: "a", found: null }, "job"],
    ["fit-step", { job: idOf(1), step: "a", found: { a: 1 } }, "found"],
    ["fit-step", { job: idOf(1), step: "a", found: null, blanks: { a: 1 } }, "blanks"],
    ["started", {}, "job"],
    ["reading", { what: "gland-gap", value: true }, "value"],
    ["adjustment", { flats: ["1"] }, "flats"],
    ["old-rings", { rings: [1] }, "rings"],
    ["bridge", { why: "no stud", owner: "p", until: "2031-02-30" }, "until"],
    ["photo", { hash: "00", type: "image/jpeg", bytes: 1 }, "hash"],
    ["photo", { hash: "0".repeat(64), type: "image/jpeg", bytes: -1 }, "bytes"],
    ["note", { text: null }, "text"],
    ["limit-set", { item: "runout", value: "0", setBy: "p" }, "value"],
    ["card-issued", { card: idOf(1), paper: "a4", survey: {} }, "figures"],
    ["signed", { entry: "", meaning: "m", name: "n" }, "entry"],
    ["crossed-out", { entry: 1 }, "entry"],
    ["linked", { to: "x", as: "moved" }, "to"],
    ["note", JSON.parse('{"text":"x","__proto__":1}') as Json, "__proto__"],
    ["note", { text: "x", constructor: 1 }, "constructor"],
  ])("a body of %s: %j", (kind, body, place) => {
    expect(withBody(kind, body)).toBe(`entry-malformed body.${place}`);
  });

  test("a text that is not the canonical one is refused: other order, spaces, names twice, numbers spelt otherwise", () => {
    const text = canonicalText(good());
    expect(readEntryText(text)).toMatchObject({ ok: true, text });
    for (const other of [
      ` ${text}`,
      text.replace('"v":1', '"v":1.0'),
      text.replace('"v":1', '"v":1,"v":1'),
      text.replace("0.05", "5e-2"),
      JSON.stringify(Object.fromEntries(Object.entries(good()).toReversed())),
      text.slice(0, -1),
      "",
    ]) {
      expect(readEntryText(other)).toMatchObject({ ok: false, fault: { id: "entry-not-json" } });
    }
  });

  test("what is too large or too deep is refused without being read on", () => {
    expect(readEntryText(" ".repeat(largestEntry + 1))).toMatchObject({ fault: { id: "entry-too-large" } });
    expect(faultOf({ ...good(), kind: "note", body: { text: "x".repeat(largestEntry) } })).toBe("entry-too-large ");
    let deep: Json = 1;
    for (let i = 0; i < 100_000; i++) deep = i % 2 ? [deep] : { a: deep };
    expect(faultOf({ ...good(), kind: "weighed", body: { deep } })).toMatch(/^entry-text body\.deep/u);
    expect(readEntryText("[".repeat(200_000)).ok).toBe(false);
  });
});

const words = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "value",
  "unit",
  "typed",
  "field",
  "\u0000",
  "\ud800",
  "\udfffx",
  "é",
  "💧",
];
const anyText = fc.oneof(fc.constantFrom(...words), fc.string({ unit: "binary", maxLength: 8 }), fc.uuid());
const anyNumber = fc.oneof(fc.double(), fc.constantFrom(-0, 1e21, 1e-7, 2 ** 53, 1e308, Number.NaN, Number.POSITIVE_INFINITY));
const { json: anyJson } = fc.letrec<{ json: Json }>((tie) => ({
  json: fc.oneof(
    { depthSize: "small" },
    fc.constantFrom<Json>(null, true, false),
    anyNumber,
    anyText,
    fc.array(tie("json"), { maxLength: 4 }),
    fc.array(fc.tuple(anyText, tie("json")), { maxLength: 4 }).map((members) => Object.fromEntries(members) as Json),
  ),
}));

/** Puts something else somewhere into a value. */
function mutated(json: Json, by: Json, random: () => number): Json {
  if (typeof json !== "object" || json === null || random() < 0.15) return by;
  const members = Object.entries(json) as [string, Json][];
  const at = Math.floor(random() * (members.length + 1));
  const changed = members.map(([name, value], place) => [name, place === at ? mutated(value, by, random) : value] as const);
  if (Array.isArray(json)) return at === members.length ? [...(json as Json[]), by] : changed.map(([, value]) => value);
  return Object.fromEntries(at === members.length ? [...changed, [pick(words, random), by]] : changed);
}

/** Holds for what is refused as data, and for what is accepted if it round-trips. */
function refusedOrKept(json: Json): boolean {
  const read = readEntry(json);
  if (!read.ok) {
    expect(read.fault.at).not.toMatch(/\p{Surrogate}/u);
    return false;
  }
  // Not by `toEqual`, which asks objects for their constructor.
  expect(isDeepStrictEqual(JSON.parse(read.text), read.entry)).toBe(true);
  const again = readEntryText(read.text);
  if (!again.ok) throw new Error(`not read again: ${again.fault.id}`);
  expect(again.text).toBe(read.text);
  expect(Buffer.from(read.text, "utf8").toString("utf8")).toBe(read.text);
  return true;
}

property("any JSON is refused as data or comes back byte for byte", [anyJson], (json) => void refusedOrKept(json), "fuzz");

property(
  "an entry with something else put into it is refused or comes back byte for byte, and its text likewise",
  [fc.integer(), anyJson],
  (seed, by) => {
    const random = chance(seed);
    const [tablet] = history(seed % 50, { devices: 1, steps: 6 });
    const entry = pick(tablet?.has ?? [], random)?.entry ?? good();
    const json = mutated(entry as unknown as Json, by, random);
    refusedOrKept(json);
    const text = JSON.stringify(json) ?? "";
    const read = readEntryText(text);
    if (read.ok) expect(read.text).toBe(text);
    const cut = text.slice(0, Math.floor(random() * text.length));
    expect(readEntryText(cut).ok).toBe(false);
  },
  "fuzz",
);

property(
  "bodies of kinds from the future pass whole or are refused whole",
  [anyJson, fc.integer({ min: 1, max: 1e9 })],
  (body, kindVersion) => {
    const kept = refusedOrKept({ ...good(), box: boxes[0] ?? null, kind: "weighed", kindVersion, body });
    const entry = { ...good(), kind: "weighed", kindVersion, body } as unknown as Entry;
    if (kept) expect(isDeepStrictEqual(JSON.parse(canonicalText(entry)), entry)).toBe(true);
  },
  "fuzz",
);
