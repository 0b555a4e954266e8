import type { Verdict } from "@ringwright/core/condition";
import type { PlanFacts } from "@ringwright/core/plan";
import type { LimitRuler } from "@ringwright/drawings";
import { nameOf } from "@ringwright/words";

/** A judged point with what is said about it, as a ruler; none where nothing is said that could be drawn. */
export function rulerOf({ id, limits, houseLimit, measured }: Verdict): LimitRuler | undefined {
  const unit = measured?.unit ?? houseLimit?.unit ?? limits[0]?.unit;
  if (unit === undefined || limits.length + (houseLimit ? 1 : 0) === 0) return undefined;
  return {
    title: nameOf(id),
    unit,
    limits: limits.map(({ value, source, beside }) => ({ value, source: { id: `opinion-by-${source}` }, ...(beside ? { beside } : {}) })),
    ...(houseLimit ? { house: { value: houseLimit.value, setBy: houseLimit.setBy } } : {}),
    ...(measured ? { measured } : {}),
  };
}

/** Fields of the survey under other names than the point they are judged by. */
const elsewhere: Readonly<Record<string, string>> = { boxDepth: "depth", boxOffset: "condition.clockGaps" };

/** The field of the survey where a point is measured, or looked at where it is not measured. */
export function fieldOf(point: string, { condition }: PlanFacts): string | undefined {
  const item = condition.find(({ id }) => id === point);
  if (item?.field !== undefined) return elsewhere[item.field] ?? `condition.${item.field}`;
  if (item?.seenField !== undefined) return `condition.sightings.${item.seenField}`;
  return point === "gap-agreement" ? "condition.clockGaps" : undefined;
}

/** Whether a point is judged by a figure, so that a site can set a limit for it. */
export function mayHaveLimit(point: string, { condition }: PlanFacts): "m" | "1" | undefined {
  const item = condition.find(({ id }) => id === point);
  return item?.field === undefined ? undefined : item.unit;
}
