import type { Temperature } from "../units/index.ts";
import type { Atmosphere, Figure, MaterialsFacts, Style } from "./facts.ts";
import { heatLimit, type Limit } from "./limit.ts";

/** The most heat a style bears in each atmosphere, and where it is not known what touches it. */
export function heatLimits(style: Style, facts: MaterialsFacts): Readonly<Record<Atmosphere | "unknown", Limit>> {
  const lubricants = facts.lubricants.filter((entry) => style.made.lubricants.includes(entry.id));
  const share = facts.selection.warnShare.value ?? 1;
  const { inAir, inWater, inSteam, inert } = style.temperature;
  const limit = (own: Figure<Temperature>, name: string, airReaches: boolean) =>
    heatLimit(own, lubricants, share, airReaches, `${style.id}-${name}-margin`);
  // Where liquid water sets no limit, what leaks out flashes: the limit in steam stands in, or that in air.
  const water = inWater.notLimiting ? (inSteam.value === null ? inAir : inSteam) : inWater;
  const own = {
    air: limit(inAir, "heat-in-air", true),
    water: limit(water, "heat-in-water", false),
    steam: limit(inSteam, "heat-in-steam", false),
    inert: limit(inert, "heat-inert", false),
    other: limit(inAir, "heat", true),
  };
  const known = Object.values(own).filter(({ value }) => Number.isFinite(value));
  const most = known.reduce((best, one) => (one.value > best.value ? one : best), known[0] ?? own.air);
  // Where no figure is known for one atmosphere, it still stands no more there than the most it stands anywhere.
  const capped = (one: Limit): Limit => (one.missing && one.value > most.value ? { ...most, missing: true } : one);
  const air = capped(own.air);
  return {
    air,
    water: capped(own.water),
    steam: capped(own.steam),
    inert: capped(own.inert),
    other: capped(own.other),
    // Not knowing what touches it, only what is too hot everywhere is too hot.
    unknown: { ...air, warn: own.air.value, top: most.value, topShown: most.shown },
  };
}
