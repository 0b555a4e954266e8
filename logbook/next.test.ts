import { quantity } from "@ringwright/core/units";
import { say } from "@ringwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boxes, chance, Device, history, idOf } from "../testing/devices.ts";
import { property } from "../testing/property.ts";
import { type FieldValue, type Measured, nextFor, surveyOf } from "./index.ts";

const [box = null] = boxes;
const hour = 3_600_000;
const noon = Date.UTC(2031, 3, 30, 12);
const job = idOf(21);
const mm = (value: number) => ({ value: value / 1000, unit: "m", typed: `${value} mm` });
const readings = (...values: number[]) => ({ readings: values.map(mm), how: "caliper" });
const limit = { repackAtGap: quantity("length", 3, "mm") };

/** A tablet on which a box is brought along; its clock stands where it is set. */
class Bench extends Device {
  now = noon;
  constructor() {
    const clock = { now: () => noon };
    super(1, chance(1), () => clock.now());
    clock.now = () => this.now;
  }

  with(...fields: readonly (readonly [string, FieldValue])[]): this {
    for (const [field, value] of fields) this.say("measured", { field, value });
    return this;
  }

  measured(): this {
    return this.with(["motion", "turning"], ["shaft", readings(50)], ["bore", readings(75)], ["depth", readings(92)]);
  }

  chosen(): this {
    return this.measured().with(["set.style", "eptfe-graphite"], ["set.rings", 5]);
  }

  fitted(): this {
    this.chosen().say("fit-step", { job, step: "step-entry", found: true });
    this.say("started", { job });
    return this;
  }

  next(limits = {}) {
    return nextFor(this.book.state(box), this.now, limits);
  }

  said(limits = {}) {
    return say(this.next(limits).says);
  }
}

describe("measure first what is missing", () => {
  test("how the shaft moves comes before all", () => {
    expect(new Bench().next()).toEqual({ does: "measure", says: { id: "next-motion" }, fields: ["motion", "shaft", "bore", "depth"] });
    expect(new Bench().with(["motion", null], ["shaft", readings(50)]).next().fields).toEqual(["motion", "bore", "depth"]);
    expect(new Bench().said()).toBe("Say how the shaft moves");
  });

  test.each<[string, [string, FieldValue][]]>([
    ["Measure shaft, bore and depth", []],
    ["Measure bore and depth", [["shaft", readings(50)]]],
    ["Measure shaft and bore", [["depth", mm(92)]]],
    [
      "Measure bore",
      [
        ["shaft", { planes: [[mm(50)]] }],
        ["depth", readings(92)],
      ],
    ],
    [
      "Measure shaft",
      [
        ["shaft", null],
        ["bore", readings(75)],
        ["depth", readings(92)],
      ],
    ],
    [
      "Measure shaft",
      [
        ["shaft", { readings: [] }],
        ["bore", readings(75)],
        ["depth", readings(92)],
      ],
    ],
    [
      "Measure shaft",
      [
        ["shaft", { planes: [[]] }],
        ["bore", readings(75)],
        ["depth", readings(92)],
      ],
    ],
    [
      "Measure shaft",
      [
        ["shaft", "don't know"],
        ["bore", readings(75)],
        ["depth", "92 mm"],
      ],
    ],
  ])("%s", (sentence, fields) => {
    const bench = new Bench().with(["motion", "turning"], ...fields);
    expect(bench.said()).toBe(sentence);
    expect(bench.next().does).toBe("measure");
  });
});

test("then choose packing and rings", () => {
  expect(new Bench().measured().next()).toEqual({ does: "choose", says: { id: "next-choose-both" }, fields: ["set.style", "set.rings"] });
  expect(new Bench().measured().with(["set.rings", 5]).said()).toBe("Choose the packing");
  expect(new Bench().measured().with(["set.style", "flax"], ["set.rings", null]).said()).toBe("Choose the number of rings");
});

describe("then fit", () => {
  test("and count the steps that were done, not those that could not be", () => {
    const bench = new Bench().chosen();
    expect(bench.next()).toEqual({ does: "fit", says: { id: "next-fit" } });
    bench.say("fit-step", { job, step: "step-a", found: null, cannot: "stuck" });
    expect(bench.said()).toBe("Fit the rings: 0 steps done");
    bench.say("fit-step", { job, step: "step-b", found: false });
    expect(bench.said()).toBe("Fit the rings: 1 step done");
    bench.say("fit-step", { job, step: "step-a", found: mm(3) });
    expect(bench.said()).toBe("Fit the rings: 2 steps done");
    expect(bench.next()).toMatchObject({ does: "fit", job });
  });

  test("a job that was begun after another was started is the one to fit", () => {
    const bench = new Bench().fitted();
    bench.now += 5000 * hour;
    bench.say("reading", { what: "gland-gap", value: mm(1) });
    expect(bench.next(limit).does).toBe("repack");
    bench.say("fit-step", { job: idOf(22), step: "step-a", found: true });
    expect(bench.next(limit)).toMatchObject({ does: "fit", job: idOf(22) });
  });
});

test("run in for a week from the start, then look at it on the round", () => {
  const bench = new Bench().fitted();
  expect(bench.said()).toBe("Run in: 0 h since start");
  bench.now = noon + 3.99 * hour;
  expect(bench.said()).toBe("Run in: 3 h since start");
  bench.now = noon + 168 * hour - 1;
  expect(bench.next()).toMatchObject({ does: "run-in", says: { with: { hours: 167 } }, job });
  bench.now = noon + 168 * hour;
  expect(bench.next()).toMatchObject({ does: "round", says: { id: "next-round" }, job });
  bench.now = noon - 1000 * hour;
  expect(bench.said()).toBe("Run in: 0 h since start");
});

test("a start that was crossed out is none", () => {
  const bench = new Bench().fitted();
  bench.say("crossed-out", { entry: bench.next().entry ?? "" });
  expect(bench.next()).toMatchObject({ does: "fit", job });
});

describe("a make-do past its day", () => {
  const bridged = () => {
    const bench = new Bench().fitted();
    bench.say("bridge", { job, step: "step-new-studs", why: "old studs used again", owner: "day shift (invented)", until: "2031-05-02" });
    return bench;
  };

  test("comes before all else, once its day is over", () => {
    const bench = bridged();
    bench.now = Date.UTC(2031, 4, 3) - 1;
    expect(bench.next().does).toBe("run-in");
    bench.now = Date.UTC(2031, 4, 3);
    expect(bench.next().does).toBe("end-bridge");
    expect(bench.said()).toBe("Make-do past its day, 2031-05-02: old studs used again (day shift (invented))");
    bench.with(["shaft", readings(1)]);
    expect(bench.next().does).toBe("end-bridge");
  });

  test.each<[string, (bench: Bench) => void]>([
    ["crossed out", (bench) => bench.say("crossed-out", { entry: bench.next().entry ?? "" })],
    ["its step done after all", (bench) => bench.say("fit-step", { job, step: "step-new-studs", found: true })],
    [
      "given a later day",
      (bench) => bench.say("bridge", { job, step: "step-new-studs", why: "no studs yet", owner: "stores", until: "2031-06-01" }),
    ],
  ])("no longer counts when %s", (_, change) => {
    const bench = bridged();
    bench.now = Date.UTC(2031, 4, 20);
    expect(bench.next().does).toBe("end-bridge");
    change(bench);
    expect(bench.next().does).toBe("round");
  });

  test("still counts when its step could not be done; of several the one longest past its day is named", () => {
    const bench = bridged();
    bench.now = Date.UTC(2031, 4, 20);
    bench.say("fit-step", { job, step: "step-new-studs", found: null, cannot: "no-stock" });
    expect(bench.next().does).toBe("end-bridge");
    bench.say("bridge", { why: "hose on the flush line", owner: "stores", until: "2031-05-01" });
    expect(bench.said()).toContain("hose on the flush line");
  });
});

test("what two tablets say differently is settled first", () => {
  const [bench, other] = [new Bench().fitted(), new Device(2, chance(2), () => noon)];
  other.say("measured", { field: "shaft", value: readings(49) });
  bench.take(other.has);
  expect(bench.next()).toEqual({ does: "settle", says: { id: "next-settle", with: { input: "shaft" } }, fields: ["shaft"] });
  expect(bench.said()).toBe("Settle what two devices say: shaft");
  bench.with(["shaft", readings(49)]);
  expect(bench.next().does).toBe("run-in");
});

describe("repack when the gap is used up", () => {
  const read = (bench: Bench, value: null | number | string | Measured) => {
    bench.now += 200 * hour;
    bench.say("reading", { what: "gland-gap", value });
    return bench;
  };

  test("at the limit, not above it, and only if there is one", () => {
    expect(read(new Bench().fitted(), mm(3)).next(limit)).toMatchObject({ does: "repack", says: { id: "next-repack" } });
    expect(read(new Bench().fitted(), mm(3)).said(limit)).toMatch(/^Repack: gland gap 3\.00\smm$/u);
    expect(read(new Bench().fitted(), mm(3.01)).next(limit).does).toBe("round");
    expect(read(new Bench().fitted(), mm(3)).next().does).toBe("round");
  });

  test("at the gap that the site has set for this box, unless another is asked for", () => {
    const bench = read(new Bench().fitted(), mm(3));
    bench.say("limit-set", { item: "gland-gap", value: mm(3), setBy: "engineer" });
    expect(bench.next().does).toBe("repack");
    expect(bench.next({ repackAtGap: quantity("length", 2, "mm") }).does).toBe("round");
    expect(surveyOf(bench.book.state(box))).not.toHaveProperty("condition");
    bench.say("limit-set", { item: "gland-gap", value: null, setBy: "engineer" });
    expect(bench.next().does).toBe("round");
  });

  test("by the newest reading that says how much", () => {
    const bench = read(read(new Bench().fitted(), mm(2)), mm(9));
    expect(bench.next(limit).does).toBe("round");
    expect(read(bench, mm(2)).next(limit).does).toBe("repack");
    for (const blank of [null, 7, "not read", { value: 9, unit: "bar", typed: "9 bar" }])
      expect(read(bench, blank).next(limit).does).toBe("repack");
    bench.say("reading", { what: "drip", value: mm(9) });
    expect(bench.next(limit).does).toBe("repack");
  });

  test("not by a reading from before the set was started, and also where no job is known", () => {
    const before = read(new Bench().chosen(), mm(2));
    expect(before.next(limit).does).toBe("repack");
    before.say("fit-step", { job, step: "step-entry", found: true });
    before.now += hour;
    before.say("started", { job });
    expect(before.next(limit).does).toBe("run-in");
    expect(read(new Bench(), mm(2)).next(limit).does).toBe("repack");
  });
});

property("whatever was written, there is one thing to do, with a sentence", [fc.integer(), fc.double({ noNaN: true })], (seed, now) => {
  for (const device of history(seed, { devices: 2, steps: 40 })) {
    const next = nextFor(device.book.state(box), now, limit);
    expect(say(next.says)).not.toBe(next.says.id);
    expect(say(next.says)).not.toMatch(/[{}]|NaN|undefined|Infinity/u);
  }
});
