import { answerOf, type Plan } from "@ringwright/core/plan";
import { type Citation, type Seen, type SourceId, sources } from "@ringwright/core/sources";
import type { Found } from "@ringwright/core/workings";
import type { PlanPage } from "./page.ts";

/** A source that a plan rests on, and how it was seen. */
export interface SourceText {
  readonly title: string;
  /** Read, quoted, from memory, worked out here, common practice. */
  readonly seen: string;
  /** Places inside it; none for what is our own or nobody's. */
  readonly at: readonly string[];
}

/** How a value was seen, in words. */
export function seenText(page: Pick<PlanPage, "words">, seen: Seen): string {
  return page.words(`seen-${seen}`);
}

/** Every source that the workings, steps and cautions of a plan cite, once for each way it was seen. */
export function sourcesText(page: PlanPage, { value: { steps }, workings }: Found<Plan>): readonly SourceText[] {
  const runIn = answerOf(steps.runIn);
  const cited: readonly Citation[] = [
    ...workings.map(([rule]) => rule.citation),
    ...[...(answerOf(steps.fit)?.steps ?? []), ...(runIn?.steps ?? [])].flatMap(({ citations }) => citations),
    ...(answerOf(steps.cautions)?.cautions ?? []).flatMap(({ citations }) => citations),
  ];
  const found = new Map<string, { source: SourceId; seen: Seen; at: Set<string> }>();
  for (const { source, at, seen = sources[source].seen } of cited) {
    const key = `${source} ${seen}`;
    const entry = found.get(key) ?? { source, seen, at: new Set() };
    if (at !== undefined) entry.at.add(at);
    found.set(key, entry);
  }
  return [...found.values()].map(({ source, seen, at }) => ({
    title: sources[source].title,
    seen: seenText(page, seen),
    at: seen === "derived" || seen === "practice" ? [] : [...at],
  }));
}
