import { holds, type Sides, type When } from "../cautions/index.ts";
import type { KnownSettings, Setting } from "../fit/index.ts";
import type { Citation } from "../sources/index.ts";
import type { Says, Shown } from "../workings/index.ts";

export const stopActions = ["watch", "hold", "back-off", "stop-and-look", "stop"] as const;
export type StopAction = (typeof stopActions)[number];

/** When to leave the nuts alone, ease them, or stop, as it stands in data/. */
export interface StopRuleFact {
  readonly id: string;
  readonly does: StopAction;
  readonly when?: readonly When[];
  /** Name in the sentence, and the setting whose value it shows. */
  readonly shows?: Readonly<Record<string, string>>;
  readonly citations: readonly Citation[];
}

export interface StopRule {
  readonly id: string;
  readonly does: StopAction;
  readonly says: Says;
  readonly citations: readonly Citation[];
}

/** The stop rules that fit a case, in the order of data/. */
export function stopRulesFor(sides: Sides, facts: readonly StopRuleFact[], settings: KnownSettings): readonly StopRule[] {
  return facts
    .filter(({ when }) => holds(when, sides))
    .map(({ id, does, shows, citations }) => {
      const values: Record<string, Shown> = {};
      for (const name in shows) {
        const setting = settings.get(shows[name] ?? "");
        if (setting) values[name] = setting.shown;
      }
      return { id, does, says: { id, with: values }, citations };
    });
}

/** The settings that those rules show, in the same order. */
export function settingsShown(sides: Sides, facts: readonly StopRuleFact[], settings: KnownSettings): readonly Setting[] {
  return facts
    .filter(({ when }) => holds(when, sides))
    .flatMap(({ shows }) => Object.values(shows ?? {}).flatMap((name) => settings.get(name) ?? []));
}
