import type { Citation } from "../sources/index.ts";
import { inUnit, type Time } from "../units/index.ts";
import type { Says, Shown } from "../workings/index.ts";
import type { KnownSettings, Setting } from "./settings.ts";
import type { OpenBand, StepFact, StepValue } from "./step.ts";

/** What the settings that a step goes by make of it: its sentence, bounds, bands and sources. */
export interface Ready {
  readonly says: Says;
  readonly most: StepValue | undefined;
  readonly least: StepValue | undefined;
  readonly wait: OpenBand | undefined;
  readonly flats: OpenBand | undefined;
  readonly rounds: OpenBand | undefined;
  readonly cannot: readonly string[];
  readonly citations: readonly Citation[];
  /** The settings it shows, for the workings. */
  readonly uses: readonly Setting[];
}

/** Readies a step. `alias` names the setting that is meant where it depends on the box. */
export function ready(
  fact: StepFact,
  settings: KnownSettings,
  reasons: readonly string[],
  alias: ((name: string) => string) | undefined,
): Ready {
  const names = [fact.wait, fact.flats, fact.rounds, fact.most, fact.least].map((name) =>
    name === undefined ? undefined : (alias?.(name) ?? name),
  );
  const [wait, flats, rounds, most, least] = names.map((name) => (name === undefined ? undefined : settings.get(name)));
  const settled = [wait, flats, rounds, most, least].filter((setting) => setting !== undefined);
  return {
    says: { id: fact.id, with: shown(wait, flats, rounds, most ?? least) },
    most: value(most),
    least: value(least),
    wait: band(wait),
    flats: band(flats),
    rounds: band(rounds),
    cannot: fact.also === undefined ? reasons : [...fact.also, ...reasons],
    citations: [...fact.citations, ...settled.flatMap((setting) => setting.citations)],
    uses: settled,
  };
}

function shown(wait?: Setting, flats?: Setting, rounds?: Setting, limit?: Setting): Record<string, Shown> {
  return {
    ...(wait ? { wait: wait.shown, hours: inUnit("time", wait.use as Time, "h") } : {}),
    ...(flats ? { flats: flats.shown } : {}),
    ...(rounds ? { rounds: rounds.high ?? rounds.use } : {}),
    ...(limit ? { limit: limit.shown } : {}),
  };
}

function value(setting: Setting | undefined): StepValue | undefined {
  if (setting === undefined) return undefined;
  return { kind: setting.kind === "flats" ? "count" : setting.kind, value: setting.use };
}

function band(setting: Setting | undefined): OpenBand | undefined {
  if (setting === undefined) return undefined;
  const { low, high } = setting;
  return high === undefined ? { low } : { low, high };
}
