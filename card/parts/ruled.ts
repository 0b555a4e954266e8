import { isStem } from "@ringwright/core/box";
import { answerOf, type Plan } from "@ringwright/core/plan";
import { shownUnit, unitText } from "@ringwright/core/units";
import type { PlanInWords, SetRow, SourceText } from "@ringwright/words/plan";
import { type Block, beside, stack } from "../blocks/block.ts";
import { type Column, gridHead, gridRow } from "../blocks/grid.ts";
import { heading, sizes, text } from "../blocks/text.ts";
import type { Setting } from "../setting.ts";

/** Shares of the width as columns of a table. */
function columns(
  width: number,
  ...shares: readonly (readonly [title: string, share: number, anchor?: Column["anchor"]])[]
): readonly Column[] {
  const all = shares.reduce((sum, [, share]) => sum + share, 0);
  return shares.map(([title, share, anchor]) => ({ title, width: (width * share) / all, ...(anchor === undefined ? {} : { anchor }) }));
}

/** A set of more parts than these is set closer. */
const manyParts = 8;

/** The set as it goes in, ring 1 first, with room for the depth found. */
export function setTable(setting: Setting, rows: readonly SetRow[], width: number): readonly Block[] {
  const { words } = setting;
  const table = columns(
    width,
    [words("card-part"), 24],
    [words("card-height"), 17, "end"],
    [words("card-joint"), 14, "middle"],
    [words("card-gauge"), 22, "end"],
    [words("card-found"), 20],
  );
  const rule = rows.map(({ part, height, joint, depth }) =>
    gridRow(setting, table, [part, height, joint, { text: depth ?? "", bold: true }, undefined], rows.length > manyParts ? 4.3 : 5.2),
  );
  return [gridHead(setting, table), ...rule];
}

const readingRows = { least: 7, usual: 12, most: 16 } as const;
const readingHeight = 7.4;

/**
 * Blank lines for what is read and moved in the first hours, as many as fill
 * the room that is left, or a usual number on the next sheet. A stem gets no
 * drip to count.
 */
export function readings(setting: Setting, plan: Plan, width: number, room: number): readonly Block[] {
  const runIn = answerOf(plan.steps.runIn);
  if (!runIn) return [];
  const { words, system } = setting;
  const stem = isStem(plan.survey.motion);
  const has = (id: string) => runIn.steps.some((step) => step.id.startsWith(id));
  const unit = (kind: "temperature" | "length" | "torque") => unitText(shownUnit(kind, system));
  const table = columns(
    width,
    [words("card-time"), 22],
    ...(!stem && has("run-read-drip") ? [[words("card-drip"), 22] as const] : []),
    ...(has("run-read-closed-drain") ? [[words("card-closed-drain"), 30] as const] : []),
    ...(has("run-read-grease") ? [[words("card-grease"), 30] as const] : []),
    ...(stem
      ? [
          [words("card-torque", { unit: unit("torque") }), 22] as const,
          [words("card-strokes"), 18] as const,
          [words("card-seen"), 40] as const,
        ]
      : [
          [words("card-box-temperature", { unit: unit("temperature") }), 20] as const,
          [words("card-product-temperature", { unit: unit("temperature") }), 24] as const,
        ]),
    [words("card-gap", { unit: unit("length") }), 34],
    ...(stem ? [] : [[words("card-flats"), 20] as const]),
    [words("card-by"), 22],
  );
  const head = stack([
    heading(setting, words(stem ? "card-readings-stem" : "card-readings"), width),
    text(setting, words("card-readings-note"), { width, size: sizes.small, ink: "quiet", after: 1 }),
    gridHead(setting, table),
  ]);
  const fits = Math.floor((room - head.height) / readingHeight);
  const rows = fits < readingRows.least ? readingRows.usual : Math.min(readingRows.most, fits);
  return [stack([head, ...Array.from({ length: rows }, () => gridRow(setting, table, [], readingHeight))])];
}

/** Blank lines for what could not be done. */
export function makeDo(setting: Setting, width: number): Block {
  const { words } = setting;
  const table = columns(width, [words("card-step"), 12], [words("card-why"), 80], [words("card-owner"), 34], [words("card-until"), 30]);
  return stack([
    heading(setting, words("card-make-do"), width),
    text(setting, words("card-make-do-note"), { width, size: sizes.small, ink: "quiet", after: 1 }),
    gridHead(setting, table),
    ...Array.from({ length: 4 }, () => gridRow(setting, table, [], readingHeight)),
  ]);
}

/** Who did the packing, blank. Nothing here gives leave to start. */
export function signatures(setting: Setting, width: number): Block {
  const { words } = setting;
  const table = columns(width, [words("card-role"), 26], [words("card-name"), 52], [words("card-signature"), 62], [words("card-date"), 40]);
  return stack([
    heading(setting, words("card-sign"), width),
    text(setting, words("card-sign-note"), { width, bold: true, after: 1.2 }),
    gridHead(setting, table),
    ...["card-packed-by", "card-checked-by", "card-handed-to"].map((id) => gridRow(setting, table, [words(id)], 10)),
  ]);
}

/** Sources that are set beside one another as one. */
const handful = 6;

/** Blocks in two columns, about as high as each other. */
function halves(blocks: readonly Block[]): readonly [readonly Block[], readonly Block[]] {
  const whole = blocks.reduce((sum, { height }) => sum + height, 0);
  let used = 0;
  const split = blocks.findIndex(({ height }) => {
    used += height;
    return used >= whole / 2;
  });
  return [blocks.slice(0, split + 1), blocks.slice(split + 1)];
}

/** Every source with how it was seen, and where in it, in two columns. */
export function sourceBlocks(setting: Setting, list: readonly SourceText[], width: number): readonly Block[] {
  const half = (width - 5) / 2;
  const blocks = list.map(({ title, seen, at }) =>
    text(setting, `${title} (${seen})${at.length === 0 ? "" : `: ${at.join("; ")}`}`, {
      width: half,
      size: sizes.tiny,
      lead: "·",
      after: 0.4,
    }),
  );
  // A handful at a time: read down the left, then down the right, before the next handful.
  return Array.from({ length: Math.ceil(blocks.length / handful) }, (_, i) => {
    const [left, right] = halves(blocks.slice(i * handful, (i + 1) * handful));
    return beside([
      { at: 0, block: stack(left) },
      { at: half + 5, block: stack(right) },
    ]);
  });
}

/** What was not known, each with a line to write it on. */
export function gapBlocks(setting: Setting, gaps: PlanInWords["gaps"], width: number): readonly Block[] {
  const at = 0.3 * width;
  const line = 44;
  return gaps.map(({ called, parts }) => {
    const named = text(setting, called, { width: at - 2 });
    const settles = text(setting, setting.words("card-settles", { parts: parts.join(", ") }), {
      width: width - at - line - 3,
      size: sizes.small,
      ink: "quiet",
    });
    const height = Math.max(6.4, named.height + 1.5, settles.height + 1.5);
    return {
      height,
      tag: "P" as const,
      paint(canvas, left, top) {
        named.paint(canvas, left, top + 1);
        canvas.rule([left + at, top + 5], [left + at + line, top + 5], 0.2);
        settles.paint(canvas, left + at + line + 3, top + 1.2);
      },
    } satisfies Block;
  });
}
