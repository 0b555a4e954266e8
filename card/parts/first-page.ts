import type { Plan } from "@ringwright/core/plan";
import { boxOfPlan, type Drawing, drawBoxSection } from "@ringwright/drawings";
import type { PlanInWords } from "@ringwright/words/plan";
import { type Block, space } from "../blocks/block.ts";
import { heading, sizes } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import { area, type Setting } from "../setting.ts";
import { type DrawingsWish, drawings, isReadable, leastRoom } from "./drawings.ts";
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
  readonly wish: DrawingsWish;
  readonly lower: readonly Block[];
  readonly later: readonly Block[];
}

/** Drawings over tables: the first arrangement in which the box can be read, else the one that leaves it most room. */
function drawnParts(page: FirstPage, box: Drawing, left: number): readonly Block[] {
  const { setting, plan } = page;
  const room = ({ lower }: Arrangement) =>
    Math.min(drawingRoom.most, left - lower.reduce((sum, { height }) => sum + height + apart, 0) - apart);
  const ways = arrangements(page, box);
  const fitting = ways.filter((way) => leastRoom(setting, plan, way.wish) <= room(way));
  const readable = fitting.find((way) => isReadable(setting, plan, way.wish, room(way)));
  const best = readable ?? fitting.toSorted((a, b) => room(b) - room(a))[0] ?? ways.at(-1);
  if (!best) return [];
  return [drawings(setting, plan, best.wish, Math.max(drawingRoom.least, room(best))), ...best.lower, ...best.later];
}

function arrangements({ setting, plan, words }: FirstPage, box: Drawing): readonly Arrangement[] {
  const lantern = lanternBlocks(setting, plan, words);
  const tables = setAndCut(setting, plan, words);
  const spare = setAndCut(setting, plan, words, { strip: false });
  const strip = stripBlock(setting, plan);
  const lists = (...blocks: readonly (Block | undefined)[]) => blocks.filter((block) => block !== undefined);
  if (!lantern)
    return [
      { wish: { box }, lower: lists(tables), later: [] },
      { wish: { box }, lower: lists(spare), later: lists(strip) },
    ];
  const under = { under: lantern.column };
  return [
    { wish: { box, ...under }, lower: lists(tables), later: [] },
    { wish: { box, ...under }, lower: lists(spare), later: lists(strip) },
    { wish: { box }, lower: lists(tables, lantern.across), later: [] },
    { wish: { box }, lower: lists(setAndCut(setting, plan, words, under)), later: [] },
    { wish: { box }, lower: lists(setAndCut(setting, plan, words, { ...under, strip: false })), later: lists(strip) },
  ];
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
