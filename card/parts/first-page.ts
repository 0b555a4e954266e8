import type { Plan } from "@ringwright/core/plan";
import { boxOfPlan, drawBoxSection } from "@ringwright/drawings";
import type { PlanInWords } from "@ringwright/words/plan";
import { type Block, space } from "../blocks/block.ts";
import { heading, sizes } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import { area, type Setting } from "../setting.ts";
import { drawings } from "./drawings.ts";
import { lanternBlock } from "./lantern.ts";
import { marks } from "./marks.ts";
import { gapBlocks } from "./ruled.ts";
import { setAndCut } from "./set-and-cut.ts";

/** The least room in which a drawing is worth its ink, and the most it takes, mm. */
const drawingRoom = { least: 60, most: 125 } as const;
/** The least room for what needs a hand and the first cautions, mm. */
const marksRoom = 20;
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
  const set = setAndCut(setting, plan, words);
  const lantern = lanternBlock(setting, plan, words);
  const box = boxOfPlan(plan, name);
  const tables = set === undefined ? 0 : set.height + apart;
  const drawn = box && drawings(setting, plan, drawBoxSection(box), lantern);
  const { shown, rest } = marks(setting, words, Math.max(marksRoom, flow.left - tables - (drawn?.wished ?? drawingRoom.least) - apart));
  flow.together(shown);
  if (drawn) {
    const room = Math.max(drawingRoom.least, Math.min(drawingRoom.most, flow.left - tables - apart));
    const { block, lanternShown } = drawn.fit(room);
    flow.together([block, space(apart)]);
    if (set) flow.together([set]);
    if (lantern && !lanternShown) {
      flow.gap(apart);
      flow.together([lantern(area.width)]);
    }
  } else {
    flow.together([noDrawing(setting)]);
    if (set) flow.together([set]);
    if (lantern) flow.together([lantern(area.width)]);
  }
  for (const mark of rest) flow.together([mark]);
  if (words.gaps.length > 0 && !drawn) gaps(flow, setting, words);
  flow.gap(4);
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
