import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../../testing/property.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type Coil, coil } from "./coil.ts";

const mm = (value: number) => quantity("length", value, "mm");
const inMm = (value: Length) => inUnit("length", value, "mm");

function coilOf(question: Parameters<typeof coil>[0]): Coil {
  const answer = coil(question);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

test("five square rings for 50 in 75 take about a metre of coil, trim in it", () => {
  const five = coilOf({ shaft: mm(50), bore: mm(75), cut: "butt", rings: 5 });
  expect(inMm(five.length)).toBeGreaterThan(5 * (196.35 + 3) - 0.1);
  expect(inMm(five.length)).toBeLessThan(5 * (196.35 + 6) + 0.1);
  expect(inMm(five.lengthRounded)).toBe(1010);
});

property(
  "slanting rings laid end to end cover the strip: each next one starts on the face the last one left",
  [fc.integer({ min: 1, max: 40 }), fc.double({ min: 15, max: 90, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true })],
  (rings, angle, trim) => {
    const rad = (angle * Math.PI) / 180;
    const found = coilOf({ shaft: mm(60), section: mm(12), cut: "skive", angle: quantity("angle", angle, "deg"), rings, trim: mm(trim) });
    // Lay them along an edge of the strip: on either edge a ring takes its mean length and its trim; the far edge starts one slant later.
    let near = 0;
    let far = (12 * Math.cos(rad)) / Math.sin(rad);
    for (let ring = 0; ring < rings; ring++) {
      near += Math.PI * 72 + trim;
      far += Math.PI * 72 + trim;
    }
    expect(inMm(found.length)).toBeCloseTo(Math.max(near, far), 5);
    expect(inMm(found.length)).toBeLessThanOrEqual(rings * (inMm(found.cutLength) + trim) + 1e-6);
    expect(found.lengthRounded).toBeGreaterThanOrEqual(found.length - 1e-9);
  },
);

test("one ring without trim takes its own cut length", () => {
  const one = coilOf({ shaft: mm(50), bore: mm(75), cut: "skive", rings: 1, trim: mm(0) });
  expect(one.length).toBeCloseTo(one.cutLength, 12);
});

test("no rings, a negative trim and a box that is none are refused by name", () => {
  const ask = (over: object) => coil({ shaft: mm(50), bore: mm(75), cut: "butt", rings: 5, ...over });
  expect(ask({ rings: 0 })).toMatchObject({ ok: false, refusal: { input: "rings" } });
  expect(ask({ rings: Number.NaN })).toMatchObject({ ok: false, refusal: { input: "rings" } });
  expect(ask({ trim: mm(-1) })).toMatchObject({ ok: false, refusal: { input: "trim" } });
  expect(ask({ bore: mm(40) })).toMatchObject({ ok: false, refusal: { kind: "impossible", input: "bore" } });
});
