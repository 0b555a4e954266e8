import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  allOf,
  boxes,
  chance,
  Device,
  exchange,
  history,
  idOf,
  pick,
  shuffled,
  stateText,
  type Written,
  wildClock,
} from "../../testing/devices.ts";
import { property } from "../../testing/property.ts";
import { Book, type Entry, factOf, fold, standing } from "../index.ts";

const seed = fc.integer({ min: 0, max: 2 ** 31 - 1 });
const small = { devices: 3, steps: 40 };
const [box = null] = boxes;
const mm = (value: number) => ({ value: value / 1000, unit: "m", typed: `${value} mm` });
const values = (state: ReturnType<typeof fold>, field: string) => state.fields.get(field)?.standing.map(({ value }) => value) ?? [];
const entriesOf = (devices: readonly Device[]) => allOf(devices).map(({ entry }) => entry);

/** Two tablets that have seen all that the other has. */
function pair(): readonly [Device, Device, () => void] {
  const one = new Device(1, chance(1));
  const other = new Device(2, chance(2));
  return [
    one,
    other,
    () => {
      one.take(other.has);
      other.take(one.has);
    },
  ];
}

property("the same entries in any order, any repetition and any heaps add up to the same", [seed, seed], (what, order) => {
  const random = chance(order);
  const entries = entriesOf(history(what, small));
  const again = shuffled([...entries, ...entries.filter(() => random() < 0.3)], random);
  const book = new Book();
  const changed = new Set<string | null>();
  for (let rest = again; rest.length > 0; ) {
    const heap = rest.slice(0, 1 + Math.floor(random() * 5));
    rest = rest.slice(heap.length);
    for (const one of book.add(heap)) changed.add(one);
    if (random() < 0.3) book.state(box);
  }
  expect(book.size).toBe(entries.length);
  expect([...changed].sort()).toEqual([...new Set(entries.map((entry) => entry.box))].sort());
  expect(book.boxes()).toEqual([...changed].sort());
  expect(book.add(again).size).toBe(0);
  for (const one of [...boxes, null]) {
    const state = stateText(fold(one, entries));
    expect(stateText(fold(one, again))).toBe(state);
    expect(stateText(book.state(one))).toBe(state);
  }
});

/** Which entries are crossed out, told by asking each stroke in turn. */
function crossedOut(all: readonly Written[]): (id: string) => boolean {
  const is = (id: string): boolean => all.some(({ entry }) => entry.kind === "crossed-out" && entry.body.entry === id && !is(entry.id));
  return is;
}

property("what stands is what was not crossed out and what no writer of a standing entry knew of", [seed], (what) => {
  const all = allOf(history(what, { devices: 4, steps: 60 }, wildClock(chance(what + 1))));
  const isCrossed = crossedOut(all);
  for (const one of boxes) {
    const state = fold(
      one,
      all.map(({ entry }) => entry),
    );
    const about = all.filter(({ entry }) => entry.box === one);
    for (const { entry, crossedOutBy } of state.entries) expect(crossedOutBy !== undefined).toBe(isCrossed(entry.id));
    for (const [field, fact] of state.fields) {
      const said = about.filter(({ entry }) => factOf(entry) === `field:${field}`);
      const live = said.filter(({ entry }) => !isCrossed(entry.id));
      const expected = live.filter(({ entry }) => !live.some(({ past }) => past.has(entry.id)));
      expect(new Set(fact.standing.map(({ value }) => JSON.stringify(value)))).toEqual(
        new Set(expected.map(({ entry }) => JSON.stringify(entry.body.value))),
      );
      for (const { entry } of fact.standing) expect(expected.map((one) => one.entry.id)).toContain(entry);
      expect(fact.said).toBe(said.length);
    }
  }
});

property("clocks that are wrong by ten years change the order of display and nothing else", [seed, seed], (what, faults) => {
  const bare = (devices: readonly Device[]) =>
    boxes.map((one) => {
      const state = fold(one, entriesOf(devices));
      const told = new Map(state.entries.map(({ entry }) => [entry.id, `${entry.device} ${entry.seq}`]));
      const facts = [...state.fields, ...state.limits].map(([name, { standing: stand, said }]) => [
        name,
        said,
        stand.map(({ value }) => JSON.stringify(value)).sort(),
      ]);
      const jobs = state.jobs.map(({ id, steps, started }) => [id, [...steps.keys()], started !== undefined]).sort();
      const crossed = state.entries.filter((shown) => shown.crossedOutBy).map(({ entry }) => told.get(entry.id));
      return JSON.stringify([facts, jobs, crossed.sort(), state.readings.length, state.entries.length]);
    });
  expect(bare(history(what, small, wildClock(chance(faults))))).toEqual(bare(history(what, small)));
});

property(
  "forged links, rings of links and rings of crossings make no fact vanish",
  [seed, seed, fc.integer({ min: 1, max: 8 })],
  (what, how, count) => {
    const random = chance(how);
    const honest = entriesOf(history(what, small)).filter((entry) => entry.kind !== "crossed-out");
    const [model] = honest.filter((entry) => factOf(entry)?.startsWith("field:"));
    if (!model) return;
    const ids = Array.from({ length: count }, (_, number) =>
      random() < 0.5 ? idOf(900 + number) : `ffffffff-ffff-7fff-bfff-${idOf(number).slice(-12)}`,
    );
    const any = [...honest.map(({ id }) => id), ...ids, ...ids];
    const forged = ids.map((id): Entry => ({ ...model, id, after: any.filter(() => random() < 0.3), body: { ...model.body, value: id } }));
    const strokes = ids.map((_, number): Entry => {
      const target = idOf(800 + Math.floor(random() * count));
      return { ...model, id: idOf(800 + number), kind: "crossed-out", after: [], body: { entry: target } };
    });
    const entries = shuffled([...honest, ...forged, ...strokes], random);
    const state = fold(model.box, entries);
    for (const [field, fact] of state.fields) expect(fact.standing.length, field).toBeGreaterThan(0);
    expect(stateText(fold(model.box, shuffled(entries, random)))).toBe(stateText(state));
    const book = new Book();
    book.add(entries);
    const heads = book.headsOf(model);
    expect(heads.length).toBeGreaterThan(0);
    const settled: Entry = { ...model, id: idOf(999), after: heads };
    expect(
      fold(model.box, [...entries, settled])
        .fields.get(String(model.body.field))
        ?.standing.map(({ entry }) => entry),
    ).toEqual([settled.id]);
  },
);

describe("two tablets", () => {
  test("what both say without having seen the other stands twice, until one who saw both settles it", () => {
    const [one, other, meet] = pair();
    one.say("measured", { field: "shaft", value: mm(50) });
    meet();
    one.say("measured", { field: "shaft", value: mm(49) });
    other.say("measured", { field: "shaft", value: mm(48) });
    meet();
    expect(values(one.book.state(box), "shaft")).toEqual(expect.arrayContaining([mm(49), mm(48)]));
    expect(values(one.book.state(box), "shaft")).toHaveLength(2);
    const settled = other.say("measured", { field: "shaft", value: mm(48) });
    expect(settled.after).toHaveLength(2);
    meet();
    expect(values(one.book.state(box), "shaft")).toEqual([mm(48)]);
    expect(stateText(one.book.state(box))).toBe(stateText(other.book.state(box)));
  });

  test("the same value said twice is no disagreement, however it was typed", () => {
    const [one, other, meet] = pair();
    one.say("measured", { field: "shaft", value: { value: 0.05, unit: "m", typed: "50 mm" } });
    other.say("measured", { field: "shaft", value: { value: 0.05, unit: "m", typed: "5 cm" } });
    meet();
    expect(values(one.book.state(box), "shaft")).toHaveLength(1);
    expect(one.book.state(box).fields.get("shaft")?.said).toBe(2);
    expect(one.say("measured", { field: "shaft", value: mm(51) }).after).toHaveLength(2);
  });

  test("a step that one ticks and the other can't do stands twice", () => {
    const [one, other, meet] = pair();
    const job = idOf(21);
    one.say("fit-step", { job, step: "step-entry", found: true });
    other.say("fit-step", { job, step: "step-entry", found: null, cannot: "stuck" });
    meet();
    expect(one.book.state(box).jobs[0]?.steps.get("step-entry")?.standing).toHaveLength(2);
  });

  test("a tablet ten years behind crosses out and follows up what the other said", () => {
    const ahead = new Device(1, chance(1), () => Date.UTC(2041, 0, 1));
    const behind = new Device(2, chance(2), () => Date.UTC(2021, 0, 1));
    const wrong = ahead.say("measured", { field: "shaft", value: mm(50) });
    ahead.say("measured", { field: "bore", value: mm(75) });
    exchange(ahead, behind, () => 0.999_999);
    behind.take(ahead.has);
    const stroke = behind.say("crossed-out", { entry: wrong.id });
    behind.say("measured", { field: "bore", value: mm(76) });
    expect(stroke.id > wrong.id).toBe(true);
    const state = behind.book.state(box);
    expect(values(state, "shaft")).toEqual([]);
    expect(state.entries.find(({ entry }) => entry.id === wrong.id)?.crossedOutBy).toBe(stroke.id);
    expect(values(state, "bore")).toEqual([mm(76)]);
    expect(standing(state.fields.get("shaft"))).toBeUndefined();
  });
});

describe("crossing out", () => {
  function chain() {
    const tablet = new Device(1, chance(7));
    const said = [50, 49, 48].map((value) => tablet.say("measured", { field: "shaft", value: mm(value) }).id);
    const cross = (id = "") => tablet.say("crossed-out", { entry: id }).id;
    return { tablet, said, cross, shaft: () => values(tablet.book.state(box), "shaft") };
  }

  test("brings back what was said before; crossing out the crossing takes it away again", () => {
    const { said, cross, shaft } = chain();
    const stroke = cross(said[2]);
    expect(shaft()).toEqual([mm(49)]);
    const second = cross(stroke);
    expect(shaft()).toEqual([mm(48)]);
    cross(second);
    expect(shaft()).toEqual([mm(49)]);
  });

  test("in the middle of a chain changes nothing that stands; the whole chain crossed out leaves nothing", () => {
    const { said, cross, shaft, tablet } = chain();
    cross(said[1]);
    expect(shaft()).toEqual([mm(48)]);
    cross(said[2]);
    expect(shaft()).toEqual([mm(50)]);
    cross(said[0]);
    expect(shaft()).toEqual([]);
    tablet.say("measured", { field: "shaft", value: mm(47) });
    expect(shaft()).toEqual([mm(47)]);
    expect(tablet.book.state(box).entries).toHaveLength(7);
  });

  test("twice names the one with the earlier id; with that one crossed out the other still counts", () => {
    const { said, cross, shaft, tablet } = chain();
    const [first, second] = [cross(said[2]), cross(said[2])].sort();
    const by = () => tablet.book.state(box).entries.find(({ entry }) => entry.id === said[2])?.crossedOutBy;
    expect(by()).toBe(first);
    cross(first);
    expect(by()).toBe(second);
    expect(shaft()).toEqual([mm(49)]);
  });

  test("crosses out nothing of another box, and something before it came", () => {
    const { said, tablet } = chain();
    const [, another = null] = boxes;
    tablet.say("crossed-out", { entry: said[2] ?? "" }, another);
    expect(values(tablet.book.state(box), "shaft")).toEqual([mm(48)]);
    const stroke = tablet.say("crossed-out", { entry: said[2] ?? "" });
    const late = new Book();
    late.add([stroke]);
    expect(late.state(box).entries).toHaveLength(1);
    late.add(tablet.has.map(({ entry }) => entry));
    expect(values(late.state(box), "shaft")).toEqual([mm(49)]);
  });

  test("takes a reading, a note and a start away, and no longer counts a job whose steps are all crossed out", () => {
    const tablet = new Device(1, chance(7));
    const job = idOf(21);
    const entries = [
      tablet.say("fit-step", { job, step: "step-entry", found: true }),
      tablet.say("started", { job }),
      tablet.say("reading", { what: "gland-gap", value: mm(9) }),
      tablet.say("note", { text: "drips" }),
    ];
    const [, started] = entries;
    tablet.say("crossed-out", { entry: started?.id ?? "" });
    expect(tablet.book.state(box).jobs).toMatchObject([{ id: job }]);
    expect(tablet.book.state(box).jobs[0]?.started).toBeUndefined();
    for (const { id } of entries) tablet.say("crossed-out", { entry: id });
    const { jobs, readings, notes, entries: shown } = tablet.book.state(box);
    expect([jobs, readings, notes]).toEqual([[], [], []]);
    expect(shown.filter(({ crossedOutBy }) => crossedOutBy !== undefined)).toHaveLength(4);
  });
});

test("kinds and versions newer than this program are kept and shown, never counted", () => {
  const tablet = new Device(1, chance(3));
  tablet.say("measured", { field: "shaft", value: mm(50) });
  const wider = tablet.sayNewer("measured", 2, { field: "shaft", value: 9, besides: [1] });
  const unheard = tablet.sayNewer("weighed", 1, { constructor: { prototype: 1 } });
  const stroke = tablet.sayNewer("crossed-out", 2, { entry: tablet.has[0]?.entry.id ?? "" });
  const state = tablet.book.state(box);
  expect(values(state, "shaft")).toEqual([mm(50)]);
  expect(
    state.entries
      .filter(({ newer }) => newer)
      .map(({ entry }) => entry.id)
      .sort(),
  ).toEqual([wider.id, unheard.id, stroke.id].sort());
  expect(tablet.book.headsOf(wider)).toEqual([]);
  expect(tablet.book.entry(wider.id)?.body).toEqual({ field: "shaft", value: 9, besides: [1] });
});

test("an empty box adds up to nothing, and entries of another box do not count", () => {
  const tablet = new Device(1, chance(3));
  tablet.say("note", { text: "of the site" }, null);
  expect(tablet.book.boxes()).toEqual([]);
  expect(tablet.book.state(null).notes).toHaveLength(1);
  expect(tablet.book.state(idOf(77))).toEqual(fold(idOf(77), []));
  expect(
    fold(
      idOf(77),
      tablet.has.map(({ entry }) => entry),
    ).entries,
  ).toEqual([]);
});

property("two entries forged under one id count as the same one wherever they met first", [seed, seed], (what, how) => {
  const random = chance(how);
  const honest = entriesOf(history(what, small));
  const forged = honest.filter(() => random() < 0.3).map((entry): Entry => ({ ...entry, by: "another", box: pick(boxes, random) }));
  const all = [...honest, ...forged];
  const books = [all, shuffled(all, random), shuffled([...all, ...forged], random)].map((entries) => {
    const book = new Book();
    for (const entry of entries) book.add([entry]);
    return book;
  });
  for (const one of boxes) {
    const state = stateText(fold(one, all));
    for (const book of books) expect(stateText(book.state(one))).toBe(state);
    for (const book of books) expect(book.boxes()).toEqual(books[0]?.boxes());
    for (const entry of honest)
      for (const book of books) expect(book.headsOf({ ...entry, box: one })).toEqual(books[0]?.headsOf({ ...entry, box: one }));
  }
});

test("an entry that gives way to one forged under its id changes both their boxes", () => {
  const [one = null, other = null] = boxes;
  const entry = new Device(1, chance(3)).say("note", { text: "drips" }, other);
  const forged: Entry = { ...entry, box: one };
  const book = new Book();
  book.add([entry]);
  expect(book.state(other).notes).toHaveLength(1);
  expect([...book.add([forged])].sort()).toEqual([one, other]);
  expect([book.state(one).notes.length, book.state(other).notes.length, book.size]).toEqual([1, 0, 1]);
  expect(book.boxes()).toEqual([one]);
  expect(book.add([entry]).size).toBe(0);
});

test("more heads than one entry can name are left for the next", () => {
  const tablet = new Device(1, chance(3));
  const first = tablet.say("measured", { field: "shaft", value: mm(50) });
  const forged = Array.from(
    { length: 1200 },
    (_, number): Entry => ({ ...first, id: idOf(5000 + number), body: { field: "shaft", value: number } }),
  );
  tablet.book.add(forged);
  tablet.say("measured", { field: "shaft", value: mm(49) });
  tablet.say("measured", { field: "shaft", value: mm(49) });
  expect(values(tablet.book.state(box), "shaft")).toEqual([mm(49)]);
});
