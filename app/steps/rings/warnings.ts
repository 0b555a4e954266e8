import type { Plan } from "@ringwright/core/plan";
import type { Warning } from "@ringwright/core/workings";
import { saidElsewhere } from "@ringwright/words/plan";

/** What is said about the set and its lantern ring, each once: what passes a limit first, what was not known last. */
export function warningsOf({ rings }: Plan): readonly Warning[] {
  const seen = new Set<string>();
  const order: readonly Warning["kind"][] = ["caution", "limit", "slip", "outside-validity", "note", "gap"];
  return [rings.set, rings.cut]
    .flatMap((part) => (part.ok ? part.warnings : []))
    .filter(({ says }) => {
      if (saidElsewhere.has(says.id)) return false;
      const text = JSON.stringify(says);
      return !seen.has(text) && seen.add(text);
    })
    .sort((one, other) => order.indexOf(one.kind) - order.indexOf(other.kind));
}

/** Whether somebody has to do something about it. */
export function needsHand({ kind }: Warning): boolean {
  return kind === "limit" || kind === "caution";
}
