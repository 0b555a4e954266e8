import { outside, type Range, type Refused, refuse } from "../workings/index.ts";
import type { FitGiven } from "./fit-steps.ts";

const lengths: Range = { min: Number.MIN_VALUE, max: 10 };

/** Refuses what no box has: counts, lengths, torques and joints out of range. */
export function refuseFit(given: FitGiven): Refused | undefined {
  const { rings, lanternAfter, torque } = given;
  const named: readonly (readonly [string, number | undefined])[] = [
    ["boxDepth", given.boxDepth],
    ["ringHeight", given.ringHeight],
    ["lanternWidth", given.lanternWidth],
    ["spacer", given.spacer],
    ["lanternFace", given.lanternFace],
    ["spacerFace", given.spacerFace],
    ["mandrel", given.mandrel],
    ["cutLength", given.cutLength],
    ["portDepth", given.portDepth],
  ];
  const refused = outside([
    ["rings", rings, { min: 1, max: 40 }, "1"],
    ...(lanternAfter === undefined ? [] : [["lanternAfter", lanternAfter, { min: 0, max: rings }, "1"] as const]),
    ...(torque === undefined ? [] : [["torque", torque, { min: 0, max: 1e5 }, "N*m"] as const]),
    ...named.flatMap(([name, value]) => (value === undefined ? [] : [[name, value, lengths, "m"] as const])),
  ]);
  return refused ?? refuseJoints(given);
}

function refuseJoints({ joints, rings }: FitGiven): Refused | undefined {
  if (joints === undefined) return undefined;
  if (joints.length !== rings) {
    const says = { id: "fit-joints-not-rings", with: { joints: joints.length, rings } };
    return refuse({ kind: "impossible", input: "joints", given: joints.length, says });
  }
  const wrong = joints.findIndex((hour) => !(hour > 0 && hour <= 12));
  if (wrong < 0) return undefined;
  const hour = joints[wrong] ?? Number.NaN;
  return refuse({
    kind: "outside-range",
    input: `joints[${wrong}]`,
    given: Number.isFinite(hour) ? hour : String(hour),
    allowed: { min: 0, max: 12 },
    says: { id: "fit-joint-hour" },
  });
}
