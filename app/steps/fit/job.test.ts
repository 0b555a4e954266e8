import { bridge, type FitGiven, fitSteps, type Step } from "@ringwright/core/fit";
import { readAllFacts } from "@ringwright/data";
import type { Bodies, BoxState, Fact, Job } from "@ringwright/logbook";
import { expect, test } from "vitest";
import { readAnswer } from "./answer.ts";
import { disagrees, jobUnderWay, openStops, standingOf, whereToGoOn, writtenBefore, writtenFor } from "./job.ts";

type Written = Bodies["fit-step"];

const facts = readAllFacts();
const given: FitGiven = { motion: "turning", rings: 5, lanternAfter: 2, release: "allowed", zone: "ordinary" };
const made = fitSteps(given, facts.fit, facts.cautions);
if (!made.ok) throw new Error("no steps");
const { steps } = made.value;
const step = (id: string): Step => steps.find((one) => one.id === id) ?? raise(id);
function raise(id: string): never {
  throw new Error(`no step ${id}`);
}

let clock = 0;
function fact(...bodies: readonly Partial<Written>[]): Fact<Written> {
  const standing = bodies.map((body) => ({
    value: { job: "j", step: "", found: true, ...body } as Written,
    entry: String(clock),
    by: "owner",
    at: `2031-04-30T10:00:${String(clock++).padStart(2, "0")}+00:00`,
  }));
  return { standing, said: standing.length };
}
const jobWith = (written: Readonly<Record<string, Fact<Written>>>): Job => ({
  id: "j",
  begun: "2031-04-30",
  steps: new Map(Object.entries(written)),
});

test("a job goes on at the first step with nothing written down, wherever others were skipped to", () => {
  expect(whereToGoOn(steps, undefined, undefined)).toBe(steps[0]?.id);
  const job = jobWith({ [steps[0]?.id ?? ""]: fact({}), [steps[2]?.id ?? ""]: fact({}) });
  expect(whereToGoOn(steps, job, undefined)).toBe(steps[1]?.id);
});

test("this device goes on exactly where it was left, unless that step is done by now or is no longer in the plan", () => {
  const job = jobWith({ [steps[0]?.id ?? ""]: fact({}) });
  expect(whereToGoOn(steps, job, "step-runout")).toBe("step-runout");
  expect(whereToGoOn(steps, jobWith({ "step-runout": fact({}) }), "step-runout")).toBe(steps[0]?.id);
  expect(whereToGoOn(steps, job, "step-seat-ring-firm-9")).toBe(steps[1]?.id);
});

test("when all is written down the last step is the place", () => {
  const all = jobWith(Object.fromEntries(steps.map(({ id }) => [id, fact({})])));
  expect(whereToGoOn(steps, all, undefined)).toBe(steps.at(-1)?.id);
});

test("not done is a make-do where there is one, and a stop where there is no way past", () => {
  expect(standingOf(step("step-runout"), { job: "j", step: "step-runout", found: null, cannot: "no-gauge" })).toBe("bridged");
  expect(standingOf(step("step-permit"), { job: "j", step: "step-permit", found: null, cannot: "other" })).toBe("stopped");
  expect(standingOf(step("step-runout"), undefined)).toBe("open");
});

test("a pressure that is not nought leaves its step open as a stop, until nought is written down after it", () => {
  const bar = (value: number): Written => ({
    job: "j",
    step: "step-prove-zero",
    found: { value, unit: "Pa", typed: "" },
    expected: { value: 0, unit: "Pa", typed: "0 bar" },
  });
  expect(standingOf(step("step-prove-zero"), bar(40_000))).toBe("off");
  expect(standingOf(step("step-prove-zero"), bar(0))).toBe("done");
});

test("before the start every step without a way past is named until it is done; make-dos do not hold it up", () => {
  const last = steps.at(-1)?.id ?? "";
  const stops = steps.filter(({ id, bridge }) => !bridge && id !== last).map(({ id }) => id);
  expect(stops.length).toBeGreaterThan(10);
  expect(openStops(steps, undefined, last).map(({ id }) => id)).toEqual(stops);
  const done = Object.fromEntries(stops.map((id) => [id, fact({ found: true })]));
  expect(openStops(steps, jobWith(done), last)).toEqual([]);
  expect(openStops(steps, jobWith({ ...done, "step-permit": fact({ found: null, cannot: "other" }) }), last).map(({ id }) => id)).toEqual([
    "step-permit",
  ]);
});

test("the job under way is the newest that was not started; a started one is over", () => {
  const started = { ...jobWith({}), started: { value: { job: "j" }, entry: "e", by: "owner", at: "" } };
  const state = (jobs: readonly Job[]) => ({ jobs }) as BoxState;
  expect(jobUnderWay(state([]))).toBeUndefined();
  expect(jobUnderWay(state([started]))).toBeUndefined();
  expect(jobUnderWay(state([started, { ...jobWith({}), id: "k" }]))?.id).toBe("k");
});

test("two devices that wrote a step down differently are both kept, and the newest is gone by", () => {
  const job = jobWith({ "step-datum": fact({ found: "top" }, { found: "tag" }) });
  expect(disagrees(job, "step-datum")).toBe(true);
  expect(writtenFor(job, "step-datum")?.found).toBe("top");
});

test("who locked it off is offered again to whoever is asked for a name, but no place and no number", () => {
  const job = jobWith({
    "step-lock-drive": fact({ blanks: { "lock-number": "12", "locked-by": "N. Fitter", time: "10:02" } }),
    "step-drain": fact({ blanks: { "drained-to": "pit" } }),
  });
  expect(writtenBefore(job, "told-to")).toEqual(["N. Fitter"]);
  expect(writtenBefore(job, "lock-number")).toEqual(["12"]);
});

const drafted = (fields: Readonly<Record<string, string>>) => new Map(Object.entries(fields));

test("a tick needs nothing, a count and a choice need a tap, a number needs a unit it can be in", () => {
  expect(readAnswer(step("step-clean-box"), drafted({}))).toMatchObject({ kind: "ready", found: true });
  expect(readAnswer(step("step-count-in"), drafted({}))).toMatchObject({ kind: "missing" });
  expect(readAnswer(step("step-count-in"), drafted({ count: "0" }))).toMatchObject({ kind: "ready", found: 0 });
  expect(readAnswer(step("step-datum"), drafted({}))).toMatchObject({ kind: "missing" });
  expect(readAnswer(step("step-runout"), drafted({ value: "0.06\nmm" }))).toMatchObject({ found: { unit: "m", typed: "0.06 mm" } });
  expect(readAnswer(step("step-runout"), drafted({ value: "3 bar\nmm" }))).toMatchObject({ kind: "refused" });
});

test("old rings left in are part of the answer, and blanks that stay empty are named", () => {
  const oldRings = fitSteps({ ...given, oldPacking: "unknown" }, facts.fit, facts.cautions);
  const count = oldRings.ok ? oldRings.value.steps.find(({ id }) => id === "step-old-rings-throat-side") : undefined;
  if (!count) throw new Error("no step that counts old rings");
  expect(readAnswer(count, drafted({ count: "3" }))).toMatchObject({ ringsLeftIn: 0, blanks: { "rings-left-in": "0" } });
  expect(readAnswer(count, drafted({ count: "3", "blank/rings-left-in": "2" }))).toMatchObject({ found: 3, ringsLeftIn: 2 });
  expect(readAnswer(step("step-permit"), drafted({ "blank/permit-number": " P-77 " }))).toMatchObject({
    kind: "ready",
    blanks: { "permit-number": "P-77" },
    empty: ["issued-by", "valid-until"],
  });
});

test("every reason that a step offers makes a make-do with owner and day, and none does where there is no way past", () => {
  const tried = steps.flatMap((one) =>
    one.cannot.map((reason) => ({
      one,
      made: bridge({ step: one.id, reason, owner: "day fitter", until: "2031-05-30", today: "2031-04-30" }, facts.fit),
    })),
  );
  expect(tried.length).toBeGreaterThan(200);
  for (const { one, made: bridged } of tried) expect(bridged.ok, one.id).toBe(one.bridge);
});
