import { answerOf, type Plan } from "@ringwright/core/plan";
import { type PlanBlock, type PlanInWords, PlanPage } from "@ringwright/words/plan";
import { type Block, beside, space, stack } from "../blocks/block.ts";
import { heading } from "../blocks/text.ts";
import { area, type Setting } from "../setting.ts";
import { goNoGo } from "./go-no-go.ts";
import { blocksOf } from "./sections.ts";

const gutter = 5;

/** The lantern ring in whatever room the sheet has for it. */
export interface LanternBlocks {
  /** Depths over go and no-go, in a column so wide. */
  column(width: number): Block;
  /** Depths beside go and no-go, as wide as the sheet. */
  readonly across: Block;
}

/** How deep the lantern ring goes, and when its port ends the travel; none without a lantern ring. */
export function lanternBlocks(setting: Setting, plan: Plan, { sections }: PlanInWords): LanternBlocks | undefined {
  const section = sections.find(({ id }) => id === "lantern");
  if (!section) return undefined;
  const mark = section.blocks.find((block) => block.kind === "mark");
  const title = (width: number) => heading(setting, section.heading, width);
  const deep = (width: number) => stack(blocksOf(setting, depths(setting, plan), width, { value: 0.66, note: 1 }));
  const limit = (width: number) => (mark ? goNoGo(setting, plan, mark.text, width) : space(0));
  const half = (area.width - gutter) / 2;
  return {
    column: (width) => stack([title(width), deep(width), space(0.8), limit(width)]),
    across: stack([
      title(area.width),
      beside([
        { at: 0, block: deep(half) },
        { at: half + gutter, block: limit(half) },
      ]),
    ]),
  };
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
