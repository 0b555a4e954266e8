import type { Plan } from "@ringwright/core/plan";
import { PlanPage, type PlanSection, setRows } from "@ringwright/words/plan";
import { useWorkshop } from "../../frame/workshop.ts";
import { Blocks } from "../../parts/section.tsx";
import { useWords } from "../../parts/words.ts";

/** The set part by part, with joints and what a depth gauge reads, and the figures that belong to the whole of it. */
export function SetInWords({ plan, of: section }: { readonly plan: Plan; readonly of: PlanSection | undefined }) {
  const words = useWords();
  const system = useWorkshop().preferences.units.value;
  if (!section) return null;
  const rows = setRows(new PlanPage(system), plan);
  const parts = new Set(rows.map(({ part }) => part));
  const [order, ...rest] = section.blocks.filter((block) => block.kind !== "row" || !parts.has(block.row.label));
  return (
    <section class="told">
      <h2>{section.heading}</h2>
      <Blocks blocks={order ? [order] : []} />
      <div class="sideways">
        <table>
          <thead>
            <tr>
              {["part", "height", "joint", "depth-gauge"].map((column) => (
                <th key={column} scope="col">
                  {words(`rings-step-${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ part, height, joint, depth }) => (
              <tr key={part}>
                <th scope="row">{part}</th>
                <td>{height}</td>
                <td>{joint === undefined ? "" : words("rings-step-clock", { hour: joint })}</td>
                <td>{depth}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Blocks blocks={rest} />
    </section>
  );
}
