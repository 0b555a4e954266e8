import type { Citation } from "../sources/index.ts";
import { type Kind, quantity, siUnits } from "../units/index.ts";
import { type Rule, rule, type Shown, type Workings } from "../workings/index.ts";

/** A time, count or size that steps print, as it stands in data/: in the unit it was published in. */
export interface SettingFact {
  readonly id: string;
  readonly kind: Kind | "count" | "flats";
  /** For a quantity. */
  readonly unit?: string;
  readonly use: number;
  readonly low: number;
  /** Left out where the source says "at least". */
  readonly high?: number;
  /** Digits after the point when a metric reader sees it. */
  readonly decimals?: number;
  readonly citations: readonly Citation[];
}

/** A setting in SI: what is used, and the spread of the sources. */
export interface Setting {
  readonly id: string;
  readonly kind: Kind | "count" | "flats";
  readonly use: number;
  readonly low: number;
  readonly high?: number;
  /** As a sentence shows it. */
  readonly shown: Shown;
  readonly citations: readonly Citation[];
}

interface Known {
  readonly setting: Setting;
  readonly rule: Rule;
}

/** Made once for each file of facts, since a rule is an object that steps point at. */
const known = new WeakMap<readonly SettingFact[], ReadonlyMap<string, Known>>();

/** Reads settings and writes each one that is used into the workings, once. */
export class Settings {
  readonly #known: readonly ReadonlyMap<string, Known>[];
  readonly #work: Workings;
  readonly #used = new Set<string>();

  constructor(work: Workings, ...files: readonly (readonly SettingFact[])[]) {
    this.#work = work;
    this.#known = files.map(knownOf);
  }

  /** A setting by name, or undefined when data/ has none of that name; it is written into the workings. */
  take(id: string): Setting | undefined {
    const found = this.#find(id);
    if (found === undefined) return undefined;
    if (!this.#used.has(id)) {
      this.#used.add(id);
      this.#work.assume(found.rule, found.setting.use);
    }
    return found.setting;
  }

  /** A setting by name, without writing it down. */
  look(id: string): Setting | undefined {
    return this.#find(id)?.setting;
  }

  #find(id: string): Known | undefined {
    for (const file of this.#known) {
      const found = file.get(id);
      if (found) return found;
    }
    return undefined;
  }
}

function knownOf(facts: readonly SettingFact[]): ReadonlyMap<string, Known> {
  const before = known.get(facts);
  if (before) return before;
  const made = new Map(facts.map((fact) => [fact.id, make(fact)]));
  known.set(facts, made);
  return made;
}

function make(fact: SettingFact): Known {
  const { id, kind, citations } = fact;
  const si = (value: number): number => (kind === "count" || kind === "flats" ? value : quantity(kind, value, fact.unit ?? siUnits[kind]));
  const low = si(fact.low);
  const high = fact.high === undefined ? {} : { high: si(fact.high) };
  const printed =
    fact.high === undefined ? `at least ${fact.low}` : fact.low === fact.high ? String(fact.low) : `${fact.low} to ${fact.high}`;
  const use = si(fact.use);
  const shown: Shown = kind === "count" || kind === "flats" ? use : { value: use, kind, decimals: fact.decimals ?? 0 };
  const setting: Setting = { id, kind, use, low, ...high, shown, citations };
  return {
    setting,
    rule: rule({
      id,
      symbol: kind === "time" ? "t" : kind === "count" || kind === "flats" ? "n" : "x",
      expression: [printed, fact.unit].filter(Boolean).join(" "),
      unit: kind === "count" || kind === "flats" ? "1" : siUnits[kind],
      inputs: [],
      citation: citations[0] ?? { source: "own-proposal" },
      assumed: { min: low, ...("high" in high ? { max: high.high } : {}) },
    }),
  };
}
