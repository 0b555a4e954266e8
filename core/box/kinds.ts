/** How the shaft moves. The rules of the branches never mix. */
export const motions = ["turning", "stroking", "rising-stem", "quarter-turn-stem", "slow-agitator"] as const;
export type Motion = (typeof motions)[number];

/** Whether what comes out of the box may be let out here. */
export const releases = ["allowed", "not-allowed", "unknown"] as const;
export type Release = (typeof releases)[number];

/** Whether ordinary phones and tablets may go to the box. */
export const zones = ["ordinary", "hazardous", "unknown"] as const;
export type Zone = (typeof zones)[number];

/** Uses that ask for a certificate for the very packing. */
export const uses = ["none", "potable", "food", "oxygen"] as const;
export type Use = (typeof uses)[number];

/** Where 12 o'clock is, chosen once per box; positions are seen facing the follower from the air side. */
export const datums = ["top", "discharge", "tag"] as const;
export type Datum = (typeof datums)[number];

/**
 * Whether the shaft is a valve stem: tight is the aim, and there is never a drip to set.
 *
 * Units: none. Range: every motion. Source: definition.
 * @example isStem("rising-stem") // true
 */
export function isStem(motion: Motion): boolean {
  return motion === "rising-stem" || motion === "quarter-turn-stem";
}

/**
 * Whether the shaft turns all the time it works, so that a film has to keep the packing alive.
 *
 * Units: none. Range: every motion. Source: definition.
 * @example turns("slow-agitator") // true
 */
export function turns(motion: Motion): boolean {
  return motion === "turning" || motion === "slow-agitator";
}
