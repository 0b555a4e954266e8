import type { Length } from "../units/index.ts";
import { type Answer, begin, type Input, outside, rule, type Workings } from "../workings/index.ts";
import { type LanternAndPort, length, type Opening, openingAt, type Reach, reach, refusePort } from "./port.ts";
import { type FurtherPush, refuseNoRings, refusePush, uniformShare, weightedShare } from "./share.ts";

export interface LanternTrack {
  /** Lantern ring from port at finger-tight; positive towards the gland. */
  readonly offsetAtStart: Length;
  /** The same when the gland has moved by the whole travel. */
  readonly offsetAtEnd: Length;
  readonly share: number;
  readonly atStart: Opening;
  readonly atEnd: Opening;
  /** Open from the first push to the last. */
  readonly openThroughout: boolean;
  /** Gland movement at which a port that starts part closed has come open. */
  readonly opensFrom?: Length | undefined;
  /** Gland movement up to which the port is open; none when the lantern ring does not move or its window is too narrow. */
  readonly opensUntil?: Length | undefined;
  /** Gland movement at which it is shut. */
  readonly shutAt?: Length | undefined;
  /** The ring that closes the port, numbered from the throat. */
  readonly closedBy?: number | undefined;
  /** Share, and end of the open stretch, when rings shorten with the stress they get. */
  readonly stressWeighted?: { readonly share: number; readonly opensUntil?: Length | undefined } | undefined;
}

const offsetInput = { symbol: "o", name: "lantern-offset", unit: "m" };
const openInput = { symbol: "a", name: "lantern-open-reach", unit: "m" };
const shutInput = { symbol: "c", name: "lantern-shut-reach", unit: "m" };
const shareInput = { symbol: "f", name: "lantern-share", unit: "1" };
const weightedInput = { symbol: "f_σ", name: "lantern-share-weighted", unit: "1" };

const opensFromRule = movement("lantern-opens-from", "y₁", "max(0, (o − a) / f)", [offsetInput, openInput, shareInput]);
const opensUntilRule = movement("lantern-opens-until", "y₂", "max(0, (o + a) / f)", [offsetInput, openInput, shareInput]);
const opensUntilWeighted = movement("lantern-opens-until-weighted", "y₂σ", "max(0, (o + a) / f_σ)", [
  offsetInput,
  openInput,
  weightedInput,
]);
const shutAtRule = movement("lantern-shut-at", "y₃", "max(0, (o + c) / f)", [offsetInput, shutInput, shareInput]);

const offsetAtEndRule = rule({
  id: "lantern-offset-at-end",
  symbol: "o′",
  expression: "o − f · y",
  unit: "m",
  inputs: [offsetInput, shareInput, { symbol: "y", name: "gapTravel", unit: "m" }],
  citation: { source: "mechanics", at: "the lantern ring moves to the throat by its share of the gland's movement" },
});

function movement(id: string, symbol: string, expression: string, inputs: readonly Input[]) {
  return rule({
    id,
    symbol,
    expression,
    unit: "m",
    inputs,
    citation: { source: "mechanics", at: "offset at finger-tight less the share of the gland's movement, set equal to the reach" },
  });
}

/** Gland movement at which the offset has come down to `-limit`, no less than none. The share is above 0. */
export function movementTo(offset: Length, limit: number, share: number): Length {
  return Math.max(0, (offset + limit) / share) as Length;
}

/**
 * Where the lantern ring stands against the flush port while the gland is
 * pulled up: rings on its throat side shorten, so it moves to the throat by
 * its share of the gland's movement.
 *
 *   o(y) = b + n_t · h + w / 2 − x − f · y,  f = n_t / (n_t + n_g)
 *   open while |o| ≤ (window − port) / 2, shut from |o| ≥ (window + port) / 2
 *
 * The stress-weighted share, given when shaft and bore are, lets each ring
 * shorten in proportion to its mean stress from a further push.
 *
 * Units: lengths m; share 1.
 * Range: rings 0 to 100 each side, not none altogether; sizes above 0 to 1 m; window no wider than the lantern ring; refused outside. Flagged: part closed or shut at the start, a window narrower than the port, a travel that would take over 35 % of the rings' height.
 * Source: geometry and mechanics, derived here; that the inner packing must not carry the lantern ring off its supply: MIL-P-18472G.
 * @example lanternTrack({ ringsThroatSide: 2, ringsGlandSide: 3, ringHeight: quantity("length", 12.5, "mm"), lanternWidth: quantity("length", 16, "mm"), window: quantity("length", 12, "mm"), portFromThroat: quantity("length", 31, "mm"), portDiameter: quantity("length", 6, "mm"), gapTravel: quantity("length", 16.5, "mm") }) // 2 mm to the gland, open until 12.5 mm
 */
export function lanternTrack(given: LanternAndPort & FurtherPush & { readonly gapTravel: Length }): Answer<LanternTrack> {
  const { gapTravel, ringsThroatSide, ringsGlandSide, ringHeight } = given;
  const refused =
    refusePort(given) ?? refusePush(given) ?? refuseNoRings(given) ?? outside([["gapTravel", gapTravel, { min: 0, max: 10 }, "m"]]);
  if (refused) return refused;
  const work = begin();
  const found = reach(work, given);
  const { offset, open, shut } = found;
  const share = uniformShare(work, given);
  const weighted = weightedShare(work, given, given);
  const offsetAtEnd = work.step(offsetAtEndRule, [offset, share, gapTravel], (offset - share * gapTravel) as Length);
  const atStart = openingAt(offset, found);
  const atEnd = openingAt(offsetAtEnd, found);
  const track: LanternTrack = {
    offsetAtStart: offset,
    offsetAtEnd,
    share,
    atStart,
    atEnd,
    openThroughout: atStart === "open" && atEnd === "open",
    opensFrom: offset > open && open >= 0 ? step(work, opensFromRule, offset, -open as Length, share) : undefined,
    opensUntil: open < 0 ? undefined : step(work, opensUntilRule, offset, open, share),
    shutAt: step(work, shutAtRule, offset, shut, share),
    closedBy: closingRing(offset, ringsThroatSide, ringsGlandSide, share, found),
    stressWeighted:
      weighted === undefined
        ? undefined
        : { share: weighted, opensUntil: open < 0 ? undefined : step(work, opensUntilWeighted, offset, open, weighted) },
  };
  warnAtStart(work, offset, found);
  if (share === 0) work.warn({ kind: "note", says: { id: "lantern-does-not-move" } });
  warnOverTravel(work, track, gapTravel, ringHeight * (ringsThroatSide + ringsGlandSide));
  return work.found(track);
}

function step(work: Workings, by: typeof opensUntilRule, offset: Length, limit: Length, share: number): Length | undefined {
  return share > 0 ? work.step(by, [offset, Math.abs(limit), share], movementTo(offset, limit, share)) : undefined;
}

/** The ring beside the lantern that covers the port: on the gland side when the lantern ring goes to the throat, else the one it starts over. */
export function closingRing(offset: Length, throatSide: number, glandSide: number, share: number, { open }: Reach): number | undefined {
  if (share === 0 && offset > open) return throatSide > 0 ? throatSide : undefined;
  return glandSide > 0 ? throatSide + 1 : undefined;
}

/** Says when the port is not open at finger-tight. */
export function warnAtStart(work: Workings, offset: Length, found: Reach): void {
  if (found.open < 0) {
    work.warn({ kind: "limit", input: "window", says: { id: "lantern-window-narrower-than-port" } });
    return;
  }
  const opening = openingAt(offset, found);
  if (opening === "open") return;
  work.warn({
    kind: "limit",
    input: "portFromThroat",
    says: {
      id: offset > 0 ? "lantern-starts-towards-gland" : "lantern-starts-towards-throat",
      with: { opening, offset: length(Math.abs(offset)) },
    },
    citation: demand,
  });
}

/** The inner packing must not let the lantern ring move off its supply. */
const demand = { source: "mil-p-18472g", at: "3.3.9" } as const;

/** The most of their height that rings are known to lose. */
export const mostLoss = 0.35;

function warnOverTravel(work: Workings, track: LanternTrack, travel: Length, rings: number): void {
  if (track.atStart === "open" && track.atEnd !== "open" && track.opensUntil !== undefined) {
    work.warn({
      kind: "limit",
      input: "gapTravel",
      says: { id: "lantern-closes-within-travel", with: { movement: length(track.opensUntil), opening: track.atEnd } },
      citation: demand,
    });
  }
  if (travel > mostLoss * rings) {
    work.warn({
      kind: "note",
      input: "gapTravel",
      given: travel,
      says: { id: "lantern-travel-beyond-rings", with: { percent: Math.round((100 * travel) / rings) } },
      citation: { source: "valve-packing-sheet", at: "whole set compressed by 25 to 35 %" },
    });
  }
}
