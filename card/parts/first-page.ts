import type { Plan } from "@ringwright/core/plan";
import { boxOfPlan, type Drawing, drawBoxSection } from "@ringwright/drawings";
import type { PlanInWords } from "@ringwright/words/plan";
import { type Block, space } from "../blocks/block.ts";
import { heading, sizes } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import { area, type Setting } from "../setting.ts";
import { drawingsIn } from "./drawings.ts";
import { lanternBlocks } from "./lantern.ts";
import { marks } from "./marks.ts";
import { gapBlocks } from "./ruled.ts";
import { setAndCut, stripBlock } from "./set-and-cut.ts";

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

/** One way to share the sheet out: what stands beside the drawing, under it, and on the next sheet. */
interface Arrangement {
  readonly beside?: (width: number) => Block;
  readonly lower: readonly Block[];
  readonly later: readonly Block[];
}

/** Drawings over tables: the first arrangement in which the box can be read, else the one that leaves it most room. */
function drawnParts(page: FirstPage, box: Drawing, left: number): readonly Block[] {
  const { setting, plan } = page;
  const drawn = drawingsIn(setting, plan, box);
  let best: { readonly room: number; readonly parts: readonly Block[] } | undefined;
  for (const { beside, lower, later } of arrangements(page)) {
    const room = Math.min(drawingRoom.most, left - lower.reduce((sum, { height }) => sum + height + apart, 0) - apart);
    const came = drawn(room, beside);
    if (!came) continue;
    const parts = [came.block, ...lower, ...later];
    if (came.readable) return parts;
    if (!best || room > best.room) best = { room, parts };
  }
  if (best) return best.parts;
  // Tables so long that nothing goes in over them have the next sheet to themselves.
  const [first] = arrangements(page);
  return [...lists(drawn(drawingRoom.most)?.block), ...(first?.lower ?? []), ...lists(lanternBlocks(setting, plan, page.words)?.across)];
}

/** The ways to share the sheet out, the best first; each is made only when it is asked for. */
function* arrangements({ setting, plan, words }: FirstPage): Generator<Arrangement> {
  const lantern = lanternBlocks(setting, plan, words);
  const tables = lists(setAndCut(setting, plan, words));
  const beside = lantern ? { beside: lantern.column } : {};
  yield { ...beside, lower: tables, later: [] };
  const strip = lists(stripBlock(setting, plan));
  yield { ...beside, lower: lists(setAndCut(setting, plan, words, { strip: false })), later: strip };
  if (!lantern) return;
  yield { lower: [...tables, lantern.across], later: [] };
  yield { lower: lists(setAndCut(setting, plan, words, { under: lantern.column })), later: [] };
  yield { lower: lists(setAndCut(setting, plan, words, { under: lantern.column, strip: false })), later: strip };
}

function lists(...blocks: readonly (Block | undefined)[]): readonly Block[] {
  return blocks.filter((block) => block !== undefined);
}

function undrawnParts({ setting, plan, words }: FirstPage): readonly Block[] {
  return lists(noDrawing(setting), setAndCut(setting, plan, words), lanternBlocks(setting, plan, words)?.across);
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
