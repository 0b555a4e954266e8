import type { PlanBlock, PlanSection } from "@ringwright/words/plan";
import { FigureButton } from "./figure-button.tsx";
import { useWords } from "./words.ts";
import { WorkingsButton } from "./workings.tsx";

type WorkingsBlock = Extract<PlanBlock, { kind: "workings" }>;

/** A remark of so many letters still stands beside its figure. */
const besideFigure = 26;

/** A part of the plan in words: rows whose figures line up, lines, marks in red chalk, and the workings of each figure a tap away. */
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
  const workings = blocks.filter((block) => block.kind === "workings");
  return (
    <>
      {groups.map((group, index) => (
        <Group key={index} blocks={group} workings={workings.length === 1 ? workings[0] : undefined} />
      ))}
    </>
  );
}

function Group({
  blocks: [first, ...rest],
  workings,
}: {
  readonly blocks: readonly PlanBlock[];
  /** Of every figure in the section, where it has but one. */
  readonly workings: WorkingsBlock | undefined;
}) {
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
              {block.row.by === "worked" && workings && block.row.value !== "" ? (
                <FigureButton value={block.row.value} part={workings.part} steps={workings.steps} />
              ) : (
                <span class={block.row.by}>{block.row.value}</span>
              )}
              {block.row.note === undefined ? null : (
                <span class={block.row.note.length > besideFigure ? "note long" : "note"}> {block.row.note}</span>
              )}
              {block.row.under === undefined ? null : <span class="beneath quiet">{block.row.under}</span>}
            </dd>
          </div>
        ),
      )}
    </dl>
  );
}
