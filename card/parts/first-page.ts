import type { Plan } from "@ringwright/core/plan";
import { boxOfPlan, type Drawing, drawBoxSection } from "@ringwright/drawings";
import type { PlanInWords } from "@ringwright/words/plan";
import { type Block, space } from "../blocks/block.ts";
import { heading, sizes } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import { area, type Setting } from "../setting.ts";
import { drawings, leastRoom } from "./drawings.ts";
import { lanternBlocks } from "./lantern.ts";
import { marks } from "./marks.ts";
import { gapBlocks } from "./ruled.ts";
import { setAndCut } from "./set-and-cut.ts";

/** The least room in which a drawing is worth its ink, and the most it takes, mm. */
const drawingRoom = { least: 60, most: 125 } as const;
/** Room for what needs a hand and the first cautions: they come before the scale of a drawing. mm */
const marksRoom = 52;
/** Between the parts of the sheet, mm. */
const apart = 2.5;

export interface FirstPage {
  readonly setting: Setting;
  readonly plan: Plan;
  readonly words: PlanInWords;
  readonly title: Block;
  readonly name: string;
}

/** What the first sheet has to say by itself: box, drawing, what needs a hand, the set, the cuts, the lantern ring. */
export function firstPage(flow: Flow, page: FirstPage): void {
  const { setting, plan, words, title, name } = page;
  flow.together([title, space(apart)]);
  const { shown, rest } = marks(setting, words, marksRoom);
  flow.together(shown);
  const box = boxOfPlan(plan, name);
  for (const block of box ? drawnParts(page, drawBoxSection(box), flow.left) : undrawnParts(page)) {
    flow.together([block]);
    flow.gap(apart);
  }
  for (const mark of rest) flow.together([mark]);
  if (words.gaps.length > 0 && !box) gaps(flow, setting, words);
  flow.gap(apart);
}

/** Drawings over tables; the lantern ring beside the one or with the other, wherever it has room. */
function drawnParts({ setting, plan, words }: FirstPage, box: Drawing, left: number): readonly Block[] {
  const lantern = lanternBlocks(setting, plan, words);
  const tables = setAndCut(setting, plan, words);
  const roomOver = (blocks: readonly Block[]) =>
    Math.max(drawingRoom.least, Math.min(drawingRoom.most, left - blocks.reduce((sum, { height }) => sum + height + apart, 0)));
  const alone = tables ? [tables] : [];
  if (!lantern) return [drawings(setting, plan, { box }, roomOver(alone)), ...alone];
  const beside = { box, under: lantern.column };
  if (leastRoom(setting, plan, beside) <= roomOver(alone)) return [drawings(setting, plan, beside, roomOver(alone)), ...alone];
  const under = setAndCut(setting, plan, words, lantern.column);
  const below = [...alone, lantern.across];
  const lower = under && tables && under.height < tables.height + apart + lantern.across.height ? [under] : below;
  return [drawings(setting, plan, { box }, roomOver(lower)), ...lower];
}

function undrawnParts({ setting, plan, words }: FirstPage): readonly Block[] {
  const parts = [noDrawing(setting), setAndCut(setting, plan, words), lanternBlocks(setting, plan, words)?.across];
  return parts.filter((part) => part !== undefined);
}

/** What was not known, with room to write it in. */
export function gaps(flow: Flow, setting: Setting, { gaps: open }: PlanInWords): void {
  const { width } = area;
  const [first, ...more] = gapBlocks(setting, open, width);
  flow.gap(apart);
  flow.together([heading(setting, setting.words("card-gaps"), width), ...(first ? [first] : [])]);
  for (const gap of more) flow.together([gap]);
  flow.gap(3.5);
}

/** Said where the drawing would stand, with room for a sketch. */
function noDrawing(setting: Setting): Block {
  const { width } = area;
  const height = drawingRoom.least;
  return {
    height: height + 3,
    tag: "P",
    paint(canvas, left, top) {
      canvas.frame([left, top], [width, height], 0.2);
      canvas.write(setting.words("card-no-drawing"), [left + 2, top + 4.5], { size: sizes.body, bold: true });
      canvas.write(setting.words("card-sketch"), [left + width - 2, top + height - 2], { size: sizes.small, ink: "quiet", anchor: "end" });
    },
  };
}
