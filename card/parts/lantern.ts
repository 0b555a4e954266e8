import { answerOf, type Plan } from "@ringwright/core/plan";
import { type PlanBlock, type PlanInWords, PlanPage } from "@ringwright/words/plan";
import { type Block, space, stack } from "../blocks/block.ts";
import { heading } from "../blocks/text.ts";
import type { Setting } from "../setting.ts";
import { goNoGo } from "./go-no-go.ts";
import { blocksOf } from "./sections.ts";

/** How deep the lantern ring goes, and when its port ends the travel, in a column so wide; none without a lantern ring. */
export function lanternBlock(setting: Setting, plan: Plan, { sections }: PlanInWords): ((width: number) => Block) | undefined {
  const section = sections.find(({ id }) => id === "lantern");
  if (!section) return undefined;
  const mark = section.blocks.find((block) => block.kind === "mark");
  return (width) =>
    stack([
      heading(setting, section.heading, width),
      ...blocksOf(setting, depths(setting, plan), width, { value: 0.66, note: 1 }),
      ...(mark ? [space(0.8), goNoGo(setting, plan, mark.text, width)] : []),
    ]);
}

/** How deep the lantern ring and the port lie, from the face of the box. */
function depths(setting: Setting, plan: Plan): readonly PlanBlock[] {
  const page = new PlanPage(setting.system);
  const part = answerOf(plan.rings.set)?.parts.find(({ kind }) => kind === "lantern");
  const { port = {} } = plan.survey;
  const row = (id: string, value: string, by: "measured" | "worked"): PlanBlock => ({
    kind: "row",
    row: { label: setting.words(id), value, by },
  });
  return [
    ...(part?.depthLeft === undefined ? [] : [row("card-lantern-depth", page.length(part.depthLeft), "worked")]),
    ...(port.fromFace === undefined ? [] : [row("card-port-depth", page.length(port.fromFace), "measured")]),
  ];
}
