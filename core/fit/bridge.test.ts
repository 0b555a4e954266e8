import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { type BridgeGiven, bridge } from "./index.ts";

const { fit } = readAllFacts();
const good: BridgeGiven = { step: "step-runout", reason: "no-gauge", owner: "day fitter", until: "2026-03-31", today: "2026-03-02" };
const outcome = (given: Partial<BridgeGiven>) => {
  const found = bridge({ ...good, ...given }, fit);
  return found.ok ? "bridge" : found.refusal.input;
};

test("a step that can't be done becomes a make-do with an owner and an end", () => {
  expect(bridge(good, fit)).toMatchObject({
    ok: true,
    value: { step: "step-runout", owner: "day fitter", until: "2026-03-31", ringsLeftIn: 0 },
  });
});

test("old rings left behind the lantern ring are counted and shown, not hidden", () => {
  expect(bridge({ ...good, step: "step-old-rings-throat-side", reason: "stuck", ringsLeftIn: 2 }, fit)).toMatchObject({
    ok: true,
    value: { ringsLeftIn: 2 },
    warnings: [{ kind: "limit", input: "ringsLeftIn", given: 2 }],
  });
});

test("nobody gets past the permit, proved zero, a ring that is off or a shaft that does not turn by hand", () => {
  for (const step of [
    "step-permit",
    "step-prove-zero",
    "step-slacken-evenly",
    "step-seat-ring-firm-3",
    "step-turn-by-hand",
    "step-flush-on",
  ]) {
    expect(bridge({ ...good, step, reason: "other" }, fit), step).toMatchObject({
      ok: false,
      refusal: { kind: "impossible", says: { id: "fit-no-way-past" } },
    });
  }
});

test("no owner, no end, an end that is past, a day that is not in the calendar, an unknown step or reason: asked again by name", () => {
  expect(outcome({ owner: "  " })).toBe("owner");
  expect(outcome({ until: "soon" })).toBe("until");
  expect(outcome({ until: "2026-02-29" })).toBe("until");
  expect(outcome({ until: "2028-02-29" })).toBe("bridge");
  expect(outcome({ until: "2026-13-01" })).toBe("until");
  expect(outcome({ until: "2026-03-02" })).toBe("until");
  expect(outcome({ today: "yesterday" })).toBe("today");
  expect(outcome({ step: "step-tea" })).toBe("step");
  expect(outcome({ reason: "tired" })).toBe("reason");
  expect(outcome({ ringsLeftIn: Number.NaN })).toBe("ringsLeftIn");
});
