import { inUnit, type Length, quantity } from "@ringwright/core/units";
import { colours, type Drawing, type LaidOut, leastSize, type Point, paint, scaleText, sheetOf, sizeOf } from "@ringwright/drawings";
import { sayIn } from "@ringwright/words";
import type { Block } from "../blocks/block.ts";
import { sizes } from "../blocks/text.ts";
import type { Setting } from "../setting.ts";

/** Scales that a drawing may have (ISO 5455). */
const listedScales = [50, 20, 10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50, 1 / 100, 1 / 200] as const;

/** Text of drawings, mm: the usual one, and the least where that gains a scale. */
const textSizes = [2.6, 2.35] as const;
const [textSize] = textSizes;
const alt = ({ drawing, show }: LaidOut) => drawing.description.map((says) => sayIn(show, says)).join(" ");

/** A drawing at a listed scale, the largest at which it goes into the room there is. */
export function atListedScale(setting: Setting, drawing: Drawing, width: number, height: number): LaidOut | undefined {
  for (const scale of listedScales) {
    const [least, lowest] = leastSize(drawing, scale);
    if (least > width || lowest > height) continue;
    for (const size of textSizes) {
      const laid = sheetOf(drawing, { scale, width, textSize: size, system: setting.system, heading: false });
      const [wide, high] = sizeOf(laid);
      if (wide <= width + 0.01 && high <= height) return laid;
    }
  }
  return undefined;
}

/** A drawing as wide as a column, not to a listed scale. */
export function asWide(setting: Setting, drawing: Drawing, width: number): LaidOut {
  return sheetOf(drawing, { width, textSize, system: setting.system, heading: false });
}

/** A laid-out drawing, in the middle of so much width. */
export function figure(laid: LaidOut, width: number): Block {
  const [wide, high] = sizeOf(laid);
  return {
    height: high,
    tag: "Figure",
    alt: alt(laid),
    paint: (canvas, left, top) => paint(laid, canvas, [left + (width - wide) / 2, top]),
  };
}

/** Length of the check bar: what a rule shows, long enough to tell a wrong print by half a per cent. */
function checkBar(system: Setting["system"]): { readonly length: number; readonly label: string } {
  return system === "metric"
    ? { length: 100, label: "100\u00a0mm" }
    : { length: inUnit("length", quantity("length", 4, "in") as Length, "mm"), label: "4\u00a0in" };
}

export const scaleLineHeight = 9;

/** The scale in words, and a bar to lay a rule against: whether this print is as large as it should be. */
export function scaleLine(setting: Setting, scale: number | undefined, width: number): Block {
  const { length, label } = checkBar(setting.system);
  const size = sizes.small;
  return {
    height: scaleLineHeight,
    tag: "P",
    paint(canvas, left, top) {
      const y = top + 4.5;
      const [from, to] = [left + width - length, left + width];
      canvas.lines(
        [
          tick(from, y),
          tick(to, y),
          [
            [from, y],
            [to, y],
          ],
        ],
        { colour: colours.worked, width: 0.25, round: false },
        false,
      );
      for (let tenth = 1; tenth < 10; tenth++)
        canvas.rule([from + (tenth * length) / 10, y], [from + (tenth * length) / 10, y - 0.9], 0.15, colours.worked);
      canvas.write(setting.words("card-check-bar", { length: label }), [left, top + 7.2], { size, ink: "quiet" });
      const said = scale === undefined ? setting.words("card-no-scale") : setting.words("card-scale", { scale: scaleText(scale) });
      canvas.write(said, [left, top + 3.6], { size: sizes.body, bold: true });
    },
  };
}

function tick(x: number, y: number): readonly Point[] {
  return [
    [x, y - 1.6],
    [x, y + 1.6],
  ];
}
