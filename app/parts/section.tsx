import type { PlanBlock, PlanSection } from "@ringwright/words/plan";
import { useWords } from "./words.ts";
import { WorkingsButton } from "./workings.tsx";

/** A part of the plan in words: rows whose figures line up, lines, marks in red chalk, and its workings a tap away. */
export function Section({ of: section, heading = section.heading }: { readonly of: PlanSection; readonly heading?: string }) {
  return (
    <section class="told">
      <h2>{heading}</h2>
      <Blocks blocks={section.blocks} />
    </section>
  );
}

/** What stands under a heading. */
export function Blocks({ blocks }: { readonly blocks: readonly PlanBlock[] }) {
  const groups: (readonly PlanBlock[])[] = [];
  for (const block of blocks) {
    const last = groups.at(-1);
    if (block.kind === "row" && last?.[0]?.kind === "row") groups[groups.length - 1] = [...last, block];
    else groups.push([block]);
  }
  return (
    <>
      {groups.map((group, index) => (
        <Group key={index} blocks={group} />
      ))}
    </>
  );
}

function Group({ blocks: [first, ...rest] }: { readonly blocks: readonly PlanBlock[] }) {
  const words = useWords();
  if (first === undefined) return null;
  if (first.kind === "mark") return <p class="chalk">{first.text}</p>;
  if (first.kind === "workings") return <WorkingsButton part={first.part} steps={first.steps} />;
  if (first.kind === "line")
    return (
      <p class={first.under ? "under" : undefined}>
        {first.point === undefined ? null : <span class="point">{first.point} </span>}
        {first.text}
      </p>
    );
  return (
    <dl class="rows" aria-label={words("app-figures")}>
      {[first, ...rest].map((block) =>
        block.kind !== "row" ? null : (
          <div key={block.row.label}>
            <dt>{block.row.label}</dt>
            <dd>
              <span class={block.row.by}>{block.row.value}</span>
              {block.row.note === undefined ? null : <span class="note"> {block.row.note}</span>}
              {block.row.under === undefined ? null : <span class="beneath quiet">{block.row.under}</span>}
            </dd>
          </div>
        ),
      )}
    </dl>
  );
}
