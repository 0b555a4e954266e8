import { answerOf, type Plan } from "@ringwright/core/plan";
import { boxOfPlan, drawBoxSection, drawCutStrip, drawJointClock, jointClockOfPlan, stripOfPlan } from "@ringwright/drawings";
import { type PlanBlock, type PlanInWords, PlanPage, setRows } from "@ringwright/words/plan";
import { type Block, beside, space, stack } from "../blocks/block.ts";
import { attention, caution, heading, sizes, text } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import type { Setting } from "../setting.ts";
import { asWide, boxDrawing, figure } from "./box-drawing.ts";
import { goNoGo } from "./go-no-go.ts";
import { gapBlocks, setTable } from "./ruled.ts";
import { blocksOf } from "./sections.ts";

/** Parts of the plan that the first sheet shows; the rest follow. */
export const onFirstPage: ReadonlySet<string> = new Set(["attention", "mind", "set", "cut", "lantern"]);

/** The least room in which a drawing is worth its ink, and the most it takes, mm. */
const drawingRoom = { least: 62, most: 112 } as const;
/** Room on the first sheet for what needs a hand and for the first cautions. */
const marksRoom = 46;
const gutter = 5;

export interface FirstPage {
  readonly setting: Setting;
  readonly plan: Plan;
  readonly words: PlanInWords;
  readonly title: Block;
  readonly name: string;
  readonly width: number;
}

/** What the first sheet has to say by itself: box, drawing, what needs a hand, the set, the cuts, the lantern ring. */
export function firstPage(flow: Flow, page: FirstPage): void {
  const { setting, plan, words, title, width } = page;
  flow.together([title, space(2.5)]);
  const { shown, rest } = marks(page);
  flow.together(shown);
  const lower = lowerPart(page);
  const table = setBlock(page, tableWidth(width));
  const below = [...(table ? [beside([{ at: 0, block: table }, ...clock(page)]), space(3)] : []), ...lower];
  const drawing = boxOfPlan(plan, page.name);
  if (drawing) {
    const taken = below.reduce((sum, { height }) => sum + height, 0);
    const room = Math.max(drawingRoom.least, Math.min(drawingRoom.most, flow.left - taken - 2));
    flow.together([boxDrawing(setting, drawBoxSection(drawing), width, room), space(2)]);
  } else flow.together([noDrawing(page)]);
  for (const block of below) flow.together([block]);
  for (const mark of rest) flow.together([mark]);
  if (words.gaps.length > 0 && !drawing) {
    const [first, ...more] = gapBlocks(setting, words.gaps, width);
    flow.gap(2);
    flow.together([heading(setting, setting.words("card-gaps"), width), ...(first ? [first] : [])]);
    for (const gap of more) flow.together([gap]);
  }
  flow.gap(4);
}

/** What needs a hand and what to mind, as much as there is room for; the rest comes after the first sheet. */
function marks({ setting, words, width }: FirstPage): { readonly shown: readonly Block[]; readonly rest: readonly Block[] } {
  const of = (id: string) => words.sections.find((section) => section.id === id);
  const texts = (blocks: readonly PlanBlock[] = []) => blocks.flatMap((block) => (block.kind === "mark" ? [block.text] : []));
  const hand = of("attention");
  const mind = texts(of("mind")?.blocks).map((said) => caution(setting, said, width));
  const red = texts(hand?.blocks).map((said) => attention(setting, said, width));
  let room = marksRoom - mind.reduce((sum, { height }) => sum + height, 0);
  const fits = red.findIndex((block) => {
    room -= block.height;
    return room < 0;
  });
  const count = fits < 0 ? red.length : Math.max(1, fits);
  const rest = red.slice(count);
  return {
    shown: [
      ...(red.length > 0 && hand
        ? [text(setting, hand.heading, { width, size: sizes.heading, bold: true, ink: "attention", after: 0.8 })]
        : []),
      ...red.slice(0, count),
      ...(rest.length > 0 ? [text(setting, setting.words("card-more-marks", { count: rest.length }), { width, ink: "attention" })] : []),
      ...mind,
      space(1),
    ],
    rest: rest.length > 0 && hand ? [heading(setting, setting.words("card-continued", { part: hand.heading }), width), ...rest] : [],
  };
}

function tableWidth(width: number): number {
  return 0.66 * width;
}

function setBlock({ setting, plan, words }: FirstPage, width: number): Block | undefined {
  const section = words.sections.find(({ id }) => id === "set");
  if (!section) return undefined;
  const rows = setRows(new PlanPage(setting.system), plan);
  const lines = section.blocks.filter((block) => block.kind === "line");
  const [order, joints] = lines.map((block) => (block.kind === "line" ? block.text : ""));
  return stack([
    heading(setting, `${section.heading}, ${order ?? ""}`, width),
    ...setTable(setting, rows, width),
    space(0.8),
    text(setting, joints ?? "", { width, size: sizes.small, ink: "quiet" }),
  ]);
}

function clock({ setting, plan, width }: FirstPage): readonly { readonly at: number; readonly block: Block }[] {
  const drawn = jointClockOfPlan(plan);
  if (!drawn) return [];
  const room = width - tableWidth(width) - gutter;
  const laid = asWide(setting, drawJointClock(drawn), room);
  return [
    {
      at: tableWidth(width) + gutter,
      block: stack([heading(setting, setting.words("card-clock"), room), space(1), figure(laid, room)]),
    },
  ];
}

/** The cuts with their strip, and the lantern ring with its go and no-go, side by side. */
function lowerPart({ setting, plan, words, width }: FirstPage): readonly Block[] {
  const half = (width - gutter) / 2;
  const at = { value: 0.52, note: 0.74 } as const;
  const of = (id: string) => words.sections.find((section) => section.id === id);
  const [cut, lantern] = [of("cut"), of("lantern")];
  const strip = stripOfPlan(plan);
  const left: Block[] = cut
    ? [
        heading(setting, cut.heading, half),
        ...blocksOf(setting, cut.blocks, half, at),
        ...(strip ? [space(1.5), figure(asWide(setting, drawCutStrip(strip), half), half)] : []),
      ]
    : [];
  const rows = lantern?.blocks.filter(({ kind }) => kind !== "mark") ?? [];
  const mark = lantern?.blocks.find(({ kind }) => kind === "mark");
  const gauge = mark?.kind === "mark" ? goNoGo(setting, plan, mark.text, half) : undefined;
  const right: Block[] = lantern
    ? [
        heading(setting, lantern.heading, half),
        ...blocksOf(setting, [...depths(setting, plan), ...rows], half, at),
        ...(gauge ? [space(0.8), gauge] : mark?.kind === "mark" ? [attention(setting, mark.text, half)] : []),
      ]
    : [];
  const rest = restOfSet(words);
  const set = rest.length > 0 ? [space(2), ...blocksOf(setting, rest, half, at)] : [];
  if (left.length === 0 && right.length === 0 && set.length === 0) return [];
  return [
    beside([
      { at: 0, block: stack(left) },
      { at: half + gutter, block: stack([...right, ...set]) },
    ]),
  ];
}

/** What the set says beyond its table: heights, entry, gland gap, travel. */
function restOfSet(words: PlanInWords): readonly PlanBlock[] {
  const blocks = words.sections.find(({ id }) => id === "set")?.blocks ?? [];
  const last = blocks.findLastIndex(({ kind }) => kind === "line");
  return blocks.slice(last + 1).filter(({ kind }) => kind === "row");
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

/** Said where the drawing would stand, with room for a sketch. */
function noDrawing({ setting, width }: FirstPage): Block {
  const height = 64;
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
