import type { Asked } from "./asked.ts";
import type { PreferenceId } from "./facts.ts";
import type { Judge } from "./judge.ts";
import { preferences, type ReadyStyle } from "./ready.ts";

const unit = (value: number) => Math.max(-1, Math.min(1, value));
/** A class of 1 to 4 as -1 to 1; not known counts for nothing. */
const graded = (rank: number | null) => (rank === null ? 0 : (rank - 2.5) / 1.5);

type Fit = (style: ReadyStyle, asked: Asked, judge: Judge) => number;

/** How well a style fits by each preference, from -1 to 1 (the last three count what was said). Our own proposal throughout. */
const fits: Readonly<Record<PreferenceId, Fit>> = {
  abrasives({ fact, preferredHardness }, { solids, hardness }) {
    const { measured, scale, floor } = hardness;
    const softSleeve = measured === undefined ? floor === "below" || floor === "unsure" : measured < (preferredHardness?.[scale] ?? 0);
    const need = solids === "coarse" ? 3 : solids === "fine" ? 2 : undefined;
    const match = need === undefined || fact.abrasives.class === null ? 0 : (fact.abrasives.class - need) / 2;
    return unit(match - (preferredHardness && softSleeve ? 0.5 : 0));
  },
  "break-in"({ fact }, { rotating, service }) {
    if (!rotating) return 0;
    return graded(fact.breakIn.class) * (service.release === "not-allowed" ? 1 : 0.5);
  },
  conformity({ fact }, { condition }) {
    return graded(fact.conformity.class) * (condition.overall === "worn" || condition.overall === "poor" ? 1 : 0.25);
  },
  colour: ({ fact }, { white }) => (white ? (fact.marks.value === true ? -1 : fact.marks.value === false ? 1 : 0) : 0),
  stock: ({ fact }, { items }) => (items.has(fact.id) ? 1 : 0),
  extrusion({ fact }, { condition, ready }) {
    const widest = Math.max(condition.throatGap ?? 0, condition.followerGap ?? 0);
    const wide = widest > (ready.facts.throatGap.value ?? Infinity);
    return fact.extrusion.class === null ? 0 : unit((2 - fact.extrusion.class) / 2) * (wide ? 1 : 0.25);
  },
  conductivity({ fact }, { rotating, service, speed }) {
    const rank = fact.conductivity.class;
    if (!rotating || rank === null) return 0;
    const starved = service.cooling === "low" || service.cooling === "none";
    // Friction heat grows with speed: at 20 m/s it counts as much as a box without cooling.
    const matters = starved ? 1 : Math.min(1, (speed?.value ?? 0) / 20);
    return unit((rank - 1.5) / 1.5) * matters;
  },
  service({ fact, usualIn }, { fluids, pressureOf, service }) {
    const known = fluids.some((row) => usualIn[row]);
    const moves = fact.services.motions.includes(service.motion === "slow-agitator" ? "slow-agitator" : pressureOf);
    return (known ? 0.5 : 0) + (moves ? 0.5 : -0.5);
  },
  caution: (_style, _asked, judge) => judge.warnings,
  // On top of the caution that each of them is.
  "chemistry-caution": (_style, _asked, judge) => judge.chemistryWarnings,
  unknown: (_style, _asked, judge) => judge.asks,
};

/** The parts of the score of one style, in the order of `preferences`; their sum is the score. */
export function scoreParts(style: ReadyStyle, asked: Asked, judge: Judge): readonly number[] {
  const { weights } = asked.ready;
  return preferences.map((id) => weights[id] * fits[id](style, asked, judge) || 0);
}
