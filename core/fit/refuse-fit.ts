import { notWithin, type Range, type Refused, refuse } from "../workings/index.ts";
import type { FitGiven } from "./fit-steps.ts";

const lengths: Range = { min: Number.MIN_VALUE, max: 10 };

const counts: Range = { min: 1, max: 40 };
const torques: Range = { min: 0, max: 1e5 };
const measures = [
  "boxDepth",
  "ringHeight",
  "lanternWidth",
  "spacer",
  "lanternFace",
  "spacerFace",
  "mandrel",
  "cutLength",
  "portDepth",
] as const satisfies readonly (keyof FitGiven)[];

/** Refuses what no box has: counts, lengths, torques and joints out of range. */
export function refuseFit(given: FitGiven): Refused | undefined {
  const { rings, lanternAfter, torque } = given;
  const refused =
    notWithin("rings", rings, counts, "1") ??
    (lanternAfter === undefined ? undefined : notWithin("lanternAfter", lanternAfter, { min: 0, max: rings }, "1")) ??
    (torque === undefined ? undefined : notWithin("torque", torque, torques, "N*m"));
  if (refused) return refused;
  for (const name of measures) {
    const value = given[name];
    const off = value === undefined ? undefined : notWithin(name, value, lengths, "m");
    if (off) return off;
  }
  return refuseJoints(given);
}

function refuseJoints({ joints, rings }: FitGiven): Refused | undefined {
  if (joints === undefined) return undefined;
  if (joints.length !== rings) {
    const says = { id: "fit-joints-not-rings", with: { joints: joints.length, rings } };
    return refuse({ kind: "impossible", input: "joints", given: joints.length, says });
  }
  let wrong = -1;
  for (let i = 0; i < joints.length && wrong < 0; i++) if (!((joints[i] ?? 0) > 0 && (joints[i] ?? 0) <= 12)) wrong = i;
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
