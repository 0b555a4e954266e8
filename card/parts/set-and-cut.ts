import type { Plan } from "@ringwright/core/plan";
import { type Drawing, drawCutStrip, stripOfPlan } from "@ringwright/drawings";
import { type PlanBlock, type PlanInWords, PlanPage, setRows } from "@ringwright/words/plan";
import { type Block, beside, space, stack } from "../blocks/block.ts";
import { heading, sizes, text } from "../blocks/text.ts";
import { area, type Setting } from "../setting.ts";
import { asWide, figure } from "./box-drawing.ts";
import { setTable } from "./ruled.ts";
import { blocksOf } from "./sections.ts";

/** Columns of the set and of the cuts, mm. */
const setWidth = 100;
const gutter = 5;
const cutWidth = area.width - setWidth - gutter;
const stripWidth = 66;

/** The set as it goes in, beside it what to cut and whatever goes under that; none when neither is known. */
export function setAndCut(
  setting: Setting,
  plan: Plan,
  { sections }: PlanInWords,
  { strip = true, under }: { readonly strip?: boolean; readonly under?: (width: number) => Block } = {},
): Block | undefined {
  const [set, cut] = ["set", "cut"].map((wanted) => sections.find(({ id }) => id === wanted));
  if (!set && !cut) return undefined;
  return beside([
    ...(set ? [{ at: 0, block: setList(setting, plan, set) }] : []),
    ...(cut
      ? [
          {
            at: set ? setWidth + gutter : 0,
            block: stack([cutList(setting, plan, cut, strip), ...(under ? [space(2), under(cutWidth)] : [])]),
          },
        ]
      : []),
  ]);
}

type Section = PlanInWords["sections"][number];

function setList(setting: Setting, plan: Plan, { heading: title, blocks }: Section): Block {
  const [order = "", joints = ""] = blocks.flatMap((block) => (block.kind === "line" ? [block.text] : []));
  return stack([
    heading(setting, `${title}, ${order}`, setWidth),
    ...setTable(setting, setRows(new PlanPage(setting.system), plan), setWidth),
    space(0.8),
    text(setting, joints, { width: setWidth, size: sizes.small, ink: "quiet" }),
  ]);
}

function cutList(setting: Setting, plan: Plan, { heading: title, blocks }: Section, withStrip: boolean): Block {
  const strip = withStrip ? stripBlock(setting, plan) : undefined;
  return stack([
    heading(setting, title, cutWidth),
    ...blocksOf(setting, blocks, cutWidth, { value: 0.5, note: 0.64 }),
    ...(strip ? [space(1), strip] : []),
  ]);
}

/** The strip to cut for one ring; none where it is not known how long. */
export function stripBlock(setting: Setting, plan: Plan): Block | undefined {
  const strip = stripOfPlan(plan);
  return strip && figure(asWide(setting, bare(drawCutStrip(strip)), stripWidth), cutWidth);
}

/** A strip without scale bar and notes: the cuts above it say the same, and its middle is seen to be left out. */
function bare(drawing: Drawing): Drawing {
  return { ...drawing, toScale: false, notes: drawing.shapes.length === 0 ? drawing.notes : [] };
}

/** What the set says beyond its table: heights, entry, gland gap, travel. */
export function restOfSet({ sections }: PlanInWords): readonly PlanBlock[] {
  const blocks = sections.find(({ id }) => id === "set")?.blocks ?? [];
  const last = blocks.findLastIndex(({ kind }) => kind === "line");
  return blocks.slice(last + 1).filter(({ kind }) => kind === "row");
}
