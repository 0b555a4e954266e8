import type { Citation } from "../sources/index.ts";
import { type Kind, quantity, siUnits } from "../units/index.ts";
import { keptFor, type Rule, rule, type Shown, type Workings } from "../workings/index.ts";

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
  /** What the workings print it by. */
  readonly rule: Rule;
}

/** Settings in SI by name. */
export type KnownSettings = ReadonlyMap<string, Setting>;

/** Made once for each file of facts, since a rule is an object that steps point at. */
const known = keptFor((facts: readonly SettingFact[]): KnownSettings => new Map(facts.map((fact) => [fact.id, make(fact)])));

/**
 * Settings of one or several files; where two have the same name, the first file's.
 *
 * Units: SI.
 * Range: any settings of data/; nothing is refused.
 * Source: each setting with its own.
 * @example settingsOf(facts.settings).get("hold-below-limit")
 */
export function settingsOf(...files: readonly (readonly SettingFact[])[]): KnownSettings {
  const [first, ...others] = files.map(known);
  return others.length === 0 && first ? first : new Map([...others.reverse(), first ?? []].flatMap((file) => [...file]));
}

/** Writes each setting that is used into the workings, once. */
export class Settings {
  readonly #known: KnownSettings;
  readonly #work: Workings;
  readonly #used = new Set<Setting>();

  constructor(work: Workings, known: KnownSettings) {
    this.#work = work;
    this.#known = known;
  }

  /** A setting by name, or undefined when data/ has none of that name; it is written into the workings. */
  take(id: string): Setting | undefined {
    const found = this.#known.get(id);
    if (found !== undefined) this.use(found);
    return found;
  }

  /** Writes a setting into the workings. */
  use(setting: Setting): void {
    if (this.#used.has(setting)) return;
    this.#used.add(setting);
    this.#work.assume(setting.rule, setting.use);
  }
}

function make(fact: SettingFact): Setting {
  const { id, kind, citations } = fact;
  const si = (value: number): number => (kind === "count" || kind === "flats" ? value : quantity(kind, value, fact.unit ?? siUnits[kind]));
  const low = si(fact.low);
  const high = fact.high === undefined ? {} : { high: si(fact.high) };
  const printed =
    fact.high === undefined ? `at least ${fact.low}` : fact.low === fact.high ? String(fact.low) : `${fact.low} to ${fact.high}`;
  const use = si(fact.use);
  const shown: Shown = kind === "count" || kind === "flats" ? use : { value: use, kind, decimals: fact.decimals ?? 0 };
  return {
    id,
    kind,
    use,
    low,
    ...high,
    shown,
    citations,
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
