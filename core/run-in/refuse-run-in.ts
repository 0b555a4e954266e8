import { isStem, turns } from "../box/index.ts";
import { notWithin, type Range, type Refused, refuse } from "../workings/index.ts";
import type { RunInGiven } from "./run-in-plan.ts";

const drips: Range = { min: Number.MIN_VALUE, max: 5000 };
const limits: Range = { min: 200, max: 1500 };
const torques: Range = { min: 0, max: 1e5 };

/** Refuses a turning shaft that may let nothing out and has neither flush nor grease to live on. */
export function refuseNoFilm(given: RunInGiven, film: string): Refused | undefined {
  const { release, motion, flush = "unknown", grease = "no" } = given;
  if (release !== "not-allowed" || !turns(motion) || film !== "product") return undefined;
  return flush === "no" && grease === "no"
    ? refuse({ kind: "impossible", input: "release", given: release, says: { id: "run-in-no-film" } })
    : refuse({ kind: "not-known", input: "flush", given: flush, allowed: ["yes", "no"], says: { id: "run-in-flush-not-known" } });
}

/** Refuses an aim that is none, and temperatures and torques that no box has. */
export function refuseRunIn({ motion, dripLow, dripHigh, temperatureLimit, torque }: RunInGiven): Refused | undefined {
  const drip = dripLow ?? dripHigh;
  if (drip !== undefined && !turns(motion)) {
    return refuse({
      kind: "impossible",
      input: dripLow === undefined ? "dripHigh" : "dripLow",
      given: Number.isFinite(drip) ? drip : String(drip),
      says: isStem(motion) ? { id: "run-in-no-drip-for-stem" } : { id: "run-in-no-drip-for-rod" },
    });
  }
  if ((dripLow === undefined) !== (dripHigh === undefined)) {
    return refuse({ kind: "not-known", input: dripLow === undefined ? "dripLow" : "dripHigh", says: { id: "run-in-drip-both-ends" } });
  }
  return (
    (dripLow === undefined ? undefined : notWithin("dripLow", dripLow, drips, "1/min")) ??
    (dripHigh === undefined ? undefined : notWithin("dripHigh", dripHigh, { min: dripLow ?? 0, max: 5000 }, "1/min")) ??
    (temperatureLimit === undefined ? undefined : notWithin("temperatureLimit", temperatureLimit, limits, "K")) ??
    (torque === undefined ? undefined : notWithin("torque", torque, torques, "N*m"))
  );
}
