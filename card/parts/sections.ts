import type { PlanBlock, PlanRow, PlanSection } from "@ringwright/words/plan";
import { type Block, stack } from "../blocks/block.ts";
import { rowBlocks } from "../blocks/rows.ts";
import { attention, heading, textLines } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import type { Setting } from "../setting.ts";

/** Lines more than these may be parted by the end of a sheet. */
const wholeUpTo = 12;

/** A part of the plan under its heading, which never stands alone at the foot of a sheet. */
export function section(flow: Flow, setting: Setting, { heading: title, blocks }: Omit<PlanSection, "id">, width: number): void {
  const body = blocksOf(setting, blocks, width);
  const [first, ...rest] = body;
  flow.together([heading(setting, title, width), ...(first ? [first] : [])]);
  for (const block of rest) flow.together([block]);
  flow.gap(3.5);
}

/** The rows and lines of a part, each as a block. */
export function blocksOf(
  setting: Setting,
  blocks: readonly PlanBlock[],
  width: number,
  at?: Parameters<typeof rowBlocks>[3],
): readonly Block[] {
  const placed: Block[] = [];
  let table: PlanRow[] = [];
  const flush = () => {
    placed.push(...rowBlocks(setting, table, width, at));
    table = [];
  };
  for (const block of blocks) {
    if (block.kind === "row") table.push(block.row);
    else if (block.kind === "line" && block.aside) continue;
    else if (block.kind !== "workings") {
      flush();
      if (block.kind === "mark") placed.push(attention(setting, block.text, width));
      else placed.push(...line(setting, block, width));
    }
  }
  flush();
  return placed;
}

function line(setting: Setting, { text: words, point, under }: Extract<PlanBlock, { kind: "line" }>, width: number): readonly Block[] {
  const wish = { width, indent: under ? 5 : 0, ...(point === undefined ? {} : { lead: point }) };
  const lines = textLines(setting, words, wish);
  const after: Block = { height: 0.6, tag: "P", paint: () => undefined };
  return lines.length > wholeUpTo ? [...lines, after] : [stack([...lines, after])];
}
