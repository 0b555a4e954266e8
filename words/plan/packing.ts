import { answerOf, type Plan } from "@ringwright/core/plan";
import type { PlanPage } from "./page.ts";

/** How many of the ranked packings are shown in full. */
const shownInFull = 5;

/** The packings in rank, each with what binds it, and the rejected ones with their reason. */
export function packingText(page: PlanPage, { chosen }: Plan): void {
  const found = answerOf(chosen.materials);
  if (!found) return;
  page.heading("plan-heading-packing");
  const taken = answerOf(chosen.style)?.style;
  if (found.ranked.length === 0) page.mark(page.words("plan-none-ranked"));
  found.ranked.slice(0, shownInFull).forEach((candidate, index) => {
    const mark = candidate.style === taken ? ` (${page.words(chosen.asked ? "plan-packing-asked" : "plan-packing-first")})` : "";
    page.line(`${page.name(candidate.style)}${mark}: ${page.words(`plan-packing-${candidate.standing}`)}`, `${index + 1}.`);
    page.under(`${page.sentence(candidate.binding.says)}${remembered(page, candidate.binding.seen)}`);
    for (const reason of candidate.because.filter(
      (one) => (one.kind === "warn" || one.kind === "ask") && one.constraint !== candidate.binding.constraint,
    ))
      page.under(page.sentence(reason.says), "·");
  });
  const rest = found.ranked.slice(shownInFull);
  if (rest.length > 0) page.aside(rest.map((candidate) => page.name(candidate.style)).join(", "), { point: `${shownInFull + 1}+` });
  if (found.rejected.length > 0) page.aside(page.words("plan-packing-rejected"));
  for (const rejected of found.rejected) {
    const why = `${page.sentence(rejected.binding.says)}${remembered(page, rejected.binding.seen)}`;
    if (chosen.asked && rejected.style === taken) page.mark(page.words("plan-packing-asked-rejected", { why }));
    page.aside(`${page.name(rejected.style)}: ${why}`, { under: true });
  }
  page.workings(page.words("plan-heading-packing"), chosen.materials);
}

function remembered(page: PlanPage, seen: boolean): string {
  return seen ? "" : ` (${page.words("plan-memory")})`;
}
