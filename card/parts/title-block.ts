import { colours } from "@ringwright/drawings";
import { type Block, stack } from "../blocks/block.ts";
import { sizes, text } from "../blocks/text.ts";
import type { Setting } from "../setting.ts";
import { type Code, codeOf, codeSize } from "./code.ts";

export interface TitleWish {
  readonly name: string;
  readonly place: string | undefined;
  /** How it moves, what may be let out, what may go there. */
  readonly first: readonly string[];
  readonly entries: readonly (readonly [label: string, value: string])[];
  readonly boxLink: string | undefined;
}

const padding = 2;
const entriesWidth = 66;
const labelled = 20;
const least = 29;

/** Who and what the card is for, framed; a code that leads to the box, or room for its tag number. */
export function titleBlock(setting: Setting, { name, place, first, entries, boxLink }: TitleWish, width: number): Block {
  const code = boxLink === undefined ? undefined : codeOf(boxLink);
  const last = Math.max(least, code === undefined ? 0 : codeSize(code));
  const wide = width - entriesWidth - last - 2 * padding;
  const tall = setting.type.width(name, sizes.name, true) > 2 * wide ? 0.75 : 1;
  const said = stack([
    text(setting, setting.words("card-kicker"), { width: wide, size: sizes.small, ink: "quiet", after: 0.6 }),
    text(setting, name, { width: wide, size: tall * sizes.name, bold: true, most: 2, after: 0.4 }),
    ...(place === undefined ? [] : [text(setting, place, { width: wide, size: sizes.body, most: 1, after: 0.6 })]),
    text(setting, first.join(" · "), { width: wide, size: sizes.small, ink: "quiet" }),
  ]);
  const height = Math.max(least, last, said.height + 2 * padding);
  return {
    height,
    tag: "H1",
    paint(canvas, left, top) {
      canvas.frame([left, top], [width, height], 0.5);
      said.paint(canvas, left + padding, top + padding);
      const [x, y] = [left + width - last - entriesWidth, left + width - last];
      canvas.rule([x, top], [x, top + height], 0.2, colours.worked);
      canvas.rule([y, top], [y, top + height], 0.2, colours.worked);
      const pitch = height / entries.length;
      for (const [i, [label, value]] of entries.entries()) {
        if (i > 0) canvas.rule([x, top + i * pitch], [y, top + i * pitch], 0.12);
        const baseline = top + (i + 0.5) * pitch + 0.34 * sizes.small;
        canvas.write(label, [x + 1.5, baseline], { size: sizes.small, ink: "quiet" });
        entryLines(setting, value).paint(canvas, x + labelled, top + (i + 0.5) * pitch);
      }
      paintLast(canvas, setting, code, [y, top], last, height);
    },
  };
}

/** A value in one line or two, its middle where it is put. */
function entryLines(setting: Setting, value: string): Block {
  const said = text(setting, value, { width: entriesWidth - labelled - 1, size: sizes.small, most: 2 });
  return { ...said, paint: (canvas, left, top) => said.paint(canvas, left, top - said.height / 2) };
}

function paintLast(
  canvas: Parameters<Block["paint"]>[0],
  setting: Setting,
  code: Code | undefined,
  [left, top]: readonly [number, number],
  width: number,
  height: number,
): void {
  if (code) {
    code.paint(canvas, left, top + (height - width) / 2, width);
    return;
  }
  canvas.write(setting.words("card-tag-number"), [left + 1.5, top + 4], { size: sizes.small, ink: "quiet" });
  canvas.rule([left + 2, top + height / 2 + 2], [left + width - 2, top + height / 2 + 2], 0.2, colours.worked);
}
