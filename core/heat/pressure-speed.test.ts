import { expect, test } from "vitest";
import { inUnit, quantity } from "../units/index.ts";
import { pressureSpeed } from "./index.ts";

test("3 bar at 3.8 m/s is 1.14 MPa·m/s, and no limit is held against it", () => {
  const answer = pressureSpeed({ boxPressureGauge: quantity("pressure", 3, "bar"), speed: quantity("speed", 3.8, "m/s") });
  if (!answer.ok) throw new Error("refused");
  expect(inUnit("pressure-speed", answer.value.pressureSpeed, "MPa*m/s")).toBeCloseTo(1.14, 12);
  expect(answer.warnings.map(({ kind, says }) => [kind, says.id])).toEqual([["note", "no-pressure-speed-limit"]]);
});

test("in psi and feet a minute it is the same product", () => {
  const answer = pressureSpeed({ boxPressureGauge: quantity("pressure", 40, "psi"), speed: quantity("speed", 750, "ft/min") });
  expect(answer.ok && inUnit("pressure-speed", answer.value.pressureSpeed, "psi*ft/min")).toBeCloseTo(30000, 6);
});

test("vacuum, going backwards or no number is refused by name", () => {
  for (const [boxPressureGauge, speed, input] of [
    [-1, 1, "boxPressureGauge"],
    [1, -1, "speed"],
    [Number.NaN, 1, "boxPressureGauge"],
    [1, 1e308, "speed"],
  ] as const) {
    expect(pressureSpeed({ boxPressureGauge: boxPressureGauge as never, speed: speed as never })).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input },
    });
  }
});
