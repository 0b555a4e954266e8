import { isStem, turns } from "../box/index.ts";
import { outside, type Refused, refuse } from "../workings/index.ts";
import type { RunInGiven } from "./run-in-plan.ts";

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
  return outside([
    ...(dripLow === undefined ? [] : [["dripLow", dripLow, { min: Number.MIN_VALUE, max: 5000 }, "1/min"] as const]),
    ...(dripHigh === undefined ? [] : [["dripHigh", dripHigh, { min: dripLow ?? 0, max: 5000 }, "1/min"] as const]),
    ...(temperatureLimit === undefined ? [] : [["temperatureLimit", temperatureLimit, { min: 200, max: 1500 }, "K"] as const]),
    ...(torque === undefined ? [] : [["torque", torque, { min: 0, max: 1e5 }, "N*m"] as const]),
  ]);
}
