import type { Citation } from "../sources/index.ts";
import { type Rule, rule } from "../workings/index.ts";
import { citeFact } from "./cite-fact.ts";
import type { Atmosphere, Figure, HardnessScale, Lubricant, MaterialsFacts, PreferenceId, Rubber, SleeveMaterial, Style } from "./facts.ts";
import { onScale } from "./hardness.ts";
import { heatLimits } from "./heat-limits.ts";
import { acidityLimit, coldLimit, kindsOfLimit, type Limit, marginRule, softLimit } from "./limit.ts";
import { type Meeting, meet } from "./meeting.ts";

/** One style, ready for comparing. */
export interface ReadyStyle {
  readonly fact: Style;
  readonly heat: Readonly<Record<Atmosphere | "unknown", Limit>>;
  readonly cold: Limit;
  readonly acidity: { readonly min: Limit; readonly max: Limit };
  readonly speed: Limit;
  readonly pressure: { readonly turning: Limit; readonly stroking: Limit; readonly stem: Limit };
  readonly meetings: readonly Meeting[];
  /** Set when it never goes on a turning shaft. */
  readonly notTurning: Citation | undefined;
  /** Whether its fibre or metal cuts a soft sleeve. */
  readonly hardFibre: boolean;
  readonly lubricated: boolean;
  /** The hardness that is wanted under it, on each scale; infinite where the scale ends before it. */
  readonly preferredHardness: Readonly<Record<HardnessScale, number>> | undefined;
  /** Whether each fluid is one it is usual in. */
  readonly usualIn: readonly boolean[];
  readonly hardness: { readonly kind: "number"; readonly value: number; readonly rule: Rule };
  readonly indexRule: Rule;
  readonly scoreRule: Rule;
}

/** All facts, ready for comparing; made once for each set of facts. */
export interface Ready {
  readonly facts: MaterialsFacts;
  readonly styles: readonly ReadyStyle[];
  readonly byId: ReadonlyMap<string, ReadyStyle>;
  readonly fluidIndex: ReadonlyMap<string, number>;
  readonly sleeves: ReadonlyMap<string, SleeveMaterial>;
  readonly rubbers: ReadonlyMap<string, Rubber>;
  readonly lubricants: ReadonlyMap<string, Lubricant>;
  /** Fluids that no usual lubricant stands: where it is not stated, it has to be asked for. */
  readonly attacksLubricants: readonly boolean[];
  readonly weights: Readonly<Record<PreferenceId, number>>;
}

export const preferences: readonly PreferenceId[] = [
  "abrasives",
  "break-in",
  "conformity",
  "colour",
  "stock",
  "extrusion",
  "conductivity",
  "service",
  "caution",
  "chemistry-caution",
  "unknown",
];

/** An id as the files spell it, from what a person wrote. */
export function spelt(id: string): string {
  return id
    .trim()
    .toLowerCase()
    .replace(/[_\s]+/gu, "-");
}

function preferredOn(wanted: number | null, { hardnessScales }: MaterialsFacts): Record<HardnessScale, number> | undefined {
  if (wanted === null) return undefined;
  const on = (scale: HardnessScale) => onScale(wanted, "HRC", scale, hardnessScales) ?? Infinity;
  return { HB: on("HB"), HRC: on("HRC"), HV: on("HV") };
}

function readyStyle(style: Style, facts: MaterialsFacts): ReadyStyle {
  const { id } = style;
  const { selection } = facts;
  const lubricants = facts.lubricants.filter((entry) => style.made.lubricants.includes(entry.id));
  const soft = (figure: Figure, of: "speed" | "pressure", name: string) =>
    softLimit(figure, { id: `${id}-${name}-margin`, input: of, of: kindsOfLimit[of] });
  const never = selection.notTurning.find((fact) => fact.style === id);
  return {
    fact: style,
    heat: heatLimits(style, facts),
    cold: coldLimit(style.temperature.min, `${id}-cold-margin`),
    acidity: {
      min: acidityLimit(style.pH.min, "min", lubricants, selection.phMargin.value ?? 0, `${id}-least-ph-margin`),
      max: acidityLimit(style.pH.max, "max", lubricants, selection.phMargin.value ?? 0, `${id}-most-ph-margin`),
    },
    speed: soft(style.speed, "speed", "speed"),
    pressure: {
      turning: soft(style.pressure.turning, "pressure", "turning-pressure"),
      stroking: soft(style.pressure.stroking, "pressure", "stroking-pressure"),
      stem: soft(style.pressure.stem, "pressure", "stem-pressure"),
    },
    meetings: facts.fluids.map((fluid) => meet(style, fluid)),
    notTurning: never && citeFact(never),
    hardFibre: selection.hardFibre.families.includes(style.family) || selection.hardFibre.styles.includes(id),
    lubricated: style.made.lubricants.length > 0 || style.made.notStated.includes("lubricant"),
    preferredHardness: preferredOn(style.sleeve.preferred.value, facts),
    usualIn: facts.fluids.map((fluid) => style.services.fluids.includes(fluid.id)),
    hardness: {
      kind: "number",
      value: facts.sleeveFloor.value ?? 0,
      rule: marginRule(`${id}-hardness-margin`, kindsOfLimit.hardness, "hardness", citeFact(facts.sleeveFloor), true),
    },
    indexRule: rule({
      id: `${id}-pressure-speed-index`,
      symbol: "u",
      expression: "(p / p_max) · (v / v_max)",
      unit: "1",
      inputs: [
        { symbol: "p", name: "pressure", unit: "Pa" },
        { symbol: "p_max", name: "pressure-limit", unit: "Pa" },
        { symbol: "v", name: "speed", unit: "m/s" },
        { symbol: "v_max", name: "speed-limit", unit: "m/s" },
      ],
      citation: citeFact(facts.index),
    }),
    scoreRule: rule({
      id: `${id}-score`,
      symbol: "S",
      expression: preferences.map((name) => `w·${name}`).join(" + "),
      unit: "1",
      inputs: preferences.map((name) => ({ symbol: `w·${name}`, name: `preference-${name}`, unit: "1" })),
      citation: citeFact(selection.weights.abrasives),
    }),
  };
}

const usualLubricants = ["lube-mineral-fat", "lube-silicone"] as const;

function makeReady(facts: MaterialsFacts): Ready {
  const styles = facts.styles.map((style) => readyStyle(style, facts));
  const weights = Object.fromEntries(preferences.map((name) => [name, facts.selection.weights[name].value ?? 0]));
  return {
    facts,
    styles,
    byId: new Map(styles.map((style) => [style.fact.id, style])),
    fluidIndex: new Map(facts.fluids.map(({ id }, index) => [id, index])),
    sleeves: new Map(facts.sleeves.map((sleeve) => [sleeve.id, sleeve])),
    rubbers: new Map(facts.rubbers.map((rubber) => [rubber.id, rubber])),
    lubricants: new Map(facts.lubricants.map((lubricant) => [lubricant.id, lubricant])),
    attacksLubricants: facts.fluids.map(({ cells }) => usualLubricants.every((chemistry) => cells[chemistry]?.rating === "N")),
    weights: weights as Record<PreferenceId, number>,
  };
}

const made = new WeakMap<MaterialsFacts, Ready>();

/** The facts ready for comparing: worked out the first time, kept as long as the facts are. */
export function ready(facts: MaterialsFacts): Ready {
  const kept = made.get(facts);
  if (kept) return kept;
  const fresh = makeReady(facts);
  made.set(facts, fresh);
  return fresh;
}
