import { isStem } from "../box/index.ts";
import { type Length, quantity } from "../units/index.ts";
import { type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import type { RingFacts } from "./facts.ts";
import type { RingHeight } from "./ring-height.ts";
import { length } from "./ring-section.ts";
import type { RingSetQuestion } from "./survey.ts";

export interface RingCount {
  readonly rings: number;
  /** How many go in with the wanted entry left; none when the depth is not known. */
  readonly fit?: number | undefined;
  readonly spacer: Length;
  /** Whether the spacer was worked out here to fill a deep box. */
  readonly deep: boolean;
}

const fitRule = rule({
  id: "rings-that-fit",
  symbol: "n",
  name: "rings-that-fit",
  expression: "⌊(B − b − p − w − e) / h_max⌋",
  unit: "1",
  inputs: [
    { symbol: "B", name: "depth", unit: "m" },
    { symbol: "b", name: "throatBush", unit: "m" },
    { symbol: "p", name: "spacer", unit: "m" },
    { symbol: "w", name: "lanternWidth", unit: "m" },
    { symbol: "e", name: "leastEntry", unit: "m" },
    { symbol: "h_max", name: "ring-height-tallest", unit: "m" },
  ],
  citation: { source: "geometry", at: "counted with rings that lose least in seating, so that the follower still enters" },
});

const spacerRule = rule({
  id: "spacer-length",
  symbol: "p",
  name: "spacer",
  expression: "B − b − w − e − n · h_max, down to the whole millimetre",
  unit: "m",
  inputs: [
    { symbol: "B", name: "depth", unit: "m" },
    { symbol: "b", name: "throatBush", unit: "m" },
    { symbol: "w", name: "lanternWidth", unit: "m" },
    { symbol: "e", name: "leastEntry", unit: "m" },
    { symbol: "n", name: "rings", unit: "1" },
    { symbol: "h_max", name: "ring-height-tallest", unit: "m" },
  ],
  citation: { source: "packing-maker-answer", at: "rest of a deep box filled by a spacer bush; the length is geometry" },
});

const millimetre = quantity("length", 1, "mm");

/** Counts the rings: as settled, else as many as fit within what practice uses; the rest of a deep box gets a spacer. */
export function countRings(
  work: Workings,
  given: RingSetQuestion,
  { tallest, lowest }: RingHeight,
  lanternWidth: Length,
  facts: RingFacts,
): RingCount | Refused {
  const { depth, throatBush = 0, spacer = 0 as Length, motion } = given;
  const counts = facts.counts.get(motion);
  if (!counts) return refuse({ kind: "not-known", input: "motion", given: motion, says: { id: "rings-no-counts" } });
  const fewest = work.step(counts.fewest.rule, [], fewestFor(given, facts, counts.fewest.value));
  const most = work.step(counts.most.rule, [], counts.most.value);
  if (depth === undefined) {
    work.warn({ kind: "gap", input: "depth", says: { id: "rings-gap-depth", with: { rings: given.rings ?? counts.usual } } });
    return { rings: given.rings ?? counts.usual, spacer, deep: false };
  }
  const room = depth - throatBush - spacer - lanternWidth;
  const wanted = given.leastEntry ?? work.step(facts.wantedEntry.rule, [], facts.wantedEntry.value);
  const least = given.leastEntry ?? work.step(facts.leastEntry.rule, [], facts.leastEntry.value);
  const fitting = (entry: number) => Math.max(0, Math.floor((room - entry) / tallest + 1e-9));
  const comfortable = fitting(wanted);
  const fit = comfortable < fewest ? Math.min(fewest, Math.max(comfortable, fitting(least))) : comfortable;
  work.step(fitRule, [depth, throatBush, spacer, lanternWidth, fit > comfortable ? least : wanted, tallest], fit);

  const refused = given.rings === undefined ? refuseShallow(fit, given, lanternWidth, tallest) : refuseTooMany(given.rings, room, lowest);
  if (refused) return refused;
  const rings = given.rings ?? (fit <= most ? fit : isStem(motion) ? counts.usual : most);
  const entry = rings > comfortable ? least : wanted;
  const over = room - entry - rings * tallest;
  const needed = given.spacer === undefined && over >= tallest;
  const length = needed
    ? work.step(
        spacerRule,
        [depth, throatBush, lanternWidth, entry, rings, tallest],
        quantity("length", Math.floor(over / millimetre + 1e-9), "mm"),
      )
    : spacer;
  if (given.rings === undefined && fit < most && Math.floor((room - wanted) / lowest + 1e-9) > fit) {
    const left = { value: wanted + tallest, kind: "length", decimals: 0 };
    work.warn({ kind: "note", input: "depth", says: { id: "rings-one-more", with: { rings: fit, next: fit + 1, left } } });
  }
  judge(work, { rings, fit, fewest, most, room: (room + lanternWidth - entry) as Length, tallest, lanternWidth }, given);
  return { rings, fit, spacer: length, deep: needed };
}

/** A slow agitator at low pressure is packed with fewer rings by one maker. */
function fewestFor({ motion, pressure }: RingSetQuestion, { oneRingPressure }: RingFacts, fewest: number): number {
  return motion === "slow-agitator" && pressure !== undefined && pressure <= oneRingPressure.value ? 1 : fewest;
}

function refuseShallow(fit: number, { depth }: RingSetQuestion, lanternWidth: Length, tallest: Length): Refused | undefined {
  if (fit >= 1) return undefined;
  return refuse({
    kind: "impossible",
    input: "depth",
    given: depth ?? 0,
    says: {
      id: lanternWidth > 0 ? "rings-none-fit-with-lantern" : "rings-none-fit",
      with: { height: length(tallest), lantern: length(lanternWidth) },
    },
  });
}

function refuseTooMany(rings: number, room: number, lowest: Length): Refused | undefined {
  const most = Math.max(0, Math.floor(room / lowest + 1e-9));
  if (rings <= most) return undefined;
  return refuse({
    kind: "impossible",
    input: "rings",
    given: rings,
    allowed: { min: 0, max: most },
    says: { id: "rings-too-many", with: { rings, most } },
  });
}

interface Judged {
  readonly rings: number;
  readonly fit: number;
  readonly fewest: number;
  readonly most: number;
  readonly room: Length;
  readonly tallest: Length;
  readonly lanternWidth: Length;
}

function judge(work: Workings, of: Judged, { motion }: RingSetQuestion): void {
  const { rings, fit, fewest, most, room, tallest, lanternWidth } = of;
  if (rings < fewest) {
    const without = Math.max(0, Math.floor(room / tallest + 1e-9));
    const id =
      fit >= fewest
        ? "rings-fewer-than-usual"
        : lanternWidth > 0 && without >= fewest
          ? "rings-too-shallow-with-lantern"
          : "rings-too-shallow";
    work.warn({
      kind: "limit",
      input: fit >= fewest ? "rings" : "depth",
      given: rings,
      says: { id, with: { rings, fewest, without, motion } },
    });
  }
  if (rings > most)
    work.warn({ kind: "limit", input: "rings", given: rings, says: { id: "rings-more-than-usual", with: { rings, most, motion } } });
}
