import { isStem, type Motion, type Release } from "../box/index.ts";
import type { GaugePressure, Length, Volume } from "../units/index.ts";
import { type Band, type Refused, refuse, type Workings } from "../workings/index.ts";
import type { DripFacts, DripMaterial, DripService, DripStage } from "./drip-facts.ts";

export interface DripQuestion {
  readonly motion: Motion;
  readonly shaft: Length;
  readonly service?: DripService;
  readonly material?: DripMaterial;
  readonly stage?: DripStage;
  /** What keeps the packing wet: product, flush or grease. */
  readonly film?: DripFilm;
  readonly release?: Release;
  /** At the bottom of the box; below the atmosphere nothing drips out by itself. */
  readonly boxPressure?: GaugePressure;
  readonly dropVolume?: Volume;
  /** Drops a minute that were counted, to hold against each figure. */
  readonly rate?: number;
  /** The site's own limits, drops a minute. */
  readonly house?: Band;
}

export const dripFilms = ["product", "flush", "grease"] as const;
export type DripFilm = (typeof dripFilms)[number];

export interface DripZero {
  /** Whether no drip at all can be in order here. Temperature then judges. */
  readonly zeroAllowed: boolean;
  readonly zeroBecause?: "flexible-graphite" | "grease" | "vacuum";
}

/** Refuses where there is no drip to set: a valve stem, or product that may not be let out. */
export function neverADrip({ motion, release, film }: DripQuestion): Refused | undefined {
  if (isStem(motion)) {
    return refuse({
      kind: "impossible",
      input: "motion",
      given: motion,
      allowed: ["turning", "stroking", "slow-agitator"],
      says: { id: "drip-never-for-stems" },
      citation: { source: "fsa-valve-leak-2016", at: "p. 2, valve packing need not leak" },
    });
  }
  if (release === "not-allowed" && (film === undefined || film === "product")) {
    const allowed = ["flush", "grease"];
    return refuse({ kind: "impossible", input: "film", given: film ?? "product", allowed, says: { id: "drip-of-product-not-allowed" } });
  }
  return undefined;
}

/** Whether the packing may run without a drip, and what then has to be watched. */
export function zeroDrip(work: Workings, facts: DripFacts, { material, film, boxPressure }: DripQuestion): DripZero {
  if (film === "grease") {
    work.warn({ kind: "caution", input: "film", says: { id: "drip-zero-grease" }, citation: { source: "mixer-manual-1" } });
    return { zeroAllowed: true, zeroBecause: "grease" };
  }
  if (boxPressure !== undefined && boxPressure < 0) {
    work.warn({
      kind: "caution",
      input: "boxPressure",
      says: { id: "drip-zero-vacuum" },
      citation: { source: "pump-handbook-2001", at: "p. 2.192" },
    });
    return { zeroAllowed: true, zeroBecause: "vacuum" };
  }
  if (material === "flexible-graphite") {
    work.warn({ kind: "caution", input: "material", says: { id: "drip-zero-graphite" }, citation: facts.graphiteMayStop });
    return { zeroAllowed: true, zeroBecause: "flexible-graphite" };
  }
  work.warn({ kind: "caution", says: { id: "drip-zero-burns" }, citation: { source: "pump-service-repack-notes" } });
  return { zeroAllowed: false };
}

/** What to keep in mind with any of the figures, and what was not said. */
export function sayWhatCounts(work: Workings, { service, release, film, dropVolume, motion }: DripQuestion): void {
  work.warn({ kind: "note", says: { id: "drip-lubricates-first" }, citation: { source: "mackay-2004", at: "section 6.2" } });
  if (dropVolume === undefined) work.warn({ kind: "gap", input: "dropVolume", says: { id: "drop-volume-not-measured" } });
  if (service === undefined) work.warn({ kind: "gap", input: "service", says: { id: "drip-service-not-said" } });
  if (release === undefined || release === "unknown") work.warn({ kind: "gap", input: "release", says: { id: "drip-release-not-said" } });
  if (release === "not-allowed" && film === "flush")
    work.warn({ kind: "caution", input: "release", says: { id: "drip-flush-to-closed-drain" } });
  if (motion !== "stroking") work.warn({ kind: "caution", says: { id: "drip-never-toward-zero" }, citation: { source: "own-proposal" } });
}
