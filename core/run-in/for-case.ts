import type { OpenCase, Seating, Sides } from "../cautions/index.ts";
import { type Block, type FitFacts, filmOf, type KnownSettings, linesOf, type Setting, settingsOf } from "../fit/index.ts";
import { keptFor } from "../workings/index.ts";
import type { RunInFacts } from "./run-in-plan.ts";
import { type StopRule, settingsShown, stopRulesFor } from "./stop-rules.ts";

/** What running in comes to for a case, whatever the numbers of the box. */
export interface SameForCase {
  readonly settings: KnownSettings;
  readonly lines: readonly Block[];
  readonly stopRules: readonly StopRule[];
  /** What the stop rules show, for the workings. */
  readonly shownByStopRules: readonly Setting[];
}

/** Made once for each case. */
export const sameFor = keptFor((facts: RunInFacts) =>
  keptFor((fitFacts: FitFacts) => {
    const settings = settingsOf(fitFacts.settings, facts.settings);
    return keptFor((open: OpenCase): SameForCase => {
      const { guards } = open;
      const sides: Sides = { ...open.sides, film: filmOf(open.sides) };
      const seating = sides.seating as Seating;
      const alias = (name: string) => settingFor(name, sides.service ?? "normal", seating);
      const same = { sides, guards, settings, reasons: fitFacts.reasons, alias };
      return {
        settings,
        lines: [
          ...linesOf("close", fitFacts.groups.close ?? [], same),
          ...linesOf("start", fitFacts.groups.start ?? [], same),
          ...linesOf("run", facts.groups.run ?? [], same),
          ...linesOf("settle", facts.groups.settle ?? [], same),
          ...linesOf("check", facts.groups.check ?? [], same),
        ],
        stopRules: stopRulesFor(sides, facts.stopRules, settings),
        shownByStopRules: settingsShown(sides, facts.stopRules, settings),
      };
    });
  }),
);

/** A step may name a wait or a move that depends on service and seating. */
function settingFor(name: string, service: string, seating: Seating): string {
  if (name === "first-wait" || name === "interval") return `${name}-${service}`;
  if (name === "move") return seating === "firm" || seating === "full-load" ? "move-firm" : "move-light";
  return name;
}
