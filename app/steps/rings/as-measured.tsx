import { answerOf, type Plan } from "@ringwright/core/plan";
import { PlanPage, type PlanSection } from "@ringwright/words/plan";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { Blocks } from "../../parts/section.tsx";
import { useWords } from "../../parts/words.ts";

/** The diameters that the section comes from, each a tap from its question, and the gap they leave. */
export function AsMeasured({ box, plan, of: section }: { readonly box: Box; readonly plan: Plan; readonly of: PlanSection | undefined }) {
  const words = useWords();
  const page = new PlanPage(useWorkshop().preferences.units.value);
  const read = (["shaft", "bore", "depth"] as const).flatMap((field) => {
    const found = answerOf(plan.box[field]);
    return found ? [{ field, value: page.length(found.mean.mean) }] : [];
  });
  // The stock is chosen from below; here stands what it has to fill.
  const gap = section?.blocks.filter((block, i) => block.kind === "workings" || (block.kind === "row" && i === 0)) ?? [];
  return (
    <section class="told">
      {section ? <h2>{section.heading}</h2> : null}
      <p class="as-measured">
        {read.map(({ field, value }) => (
          <span key={field}>
            {words(`drawing-${field}`)}{" "}
            <Link to={onBox(box.id, "measure", field)} class="measured">
              {value}
            </Link>
          </span>
        ))}
      </p>
      <Blocks blocks={gap} />
    </section>
  );
}
