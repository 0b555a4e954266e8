import { answerOf, type Plan } from "@ringwright/core/plan";
import { inUnit, type Length } from "@ringwright/core/units";
import { colours } from "@ringwright/drawings";
import { type Block, stack } from "../blocks/block.ts";
import { attention, sizes, text } from "../blocks/text.ts";
import type { Setting } from "../setting.ts";

/** Largest drill shank that is drawn in its true size, mm. */
const largestDrawn = 20;

/** The drill shank that tells when to repack, round and in its true size; none where the port doesn't limit. */
export function goNoGo(setting: Setting, plan: Plan, words: string, width: number): Block | undefined {
  const gap = answerOf(plan.rings.set)?.lantern?.limit?.repackGap;
  if (gap === undefined) return undefined;
  const marked = attention(setting, words, width);
  const diameter = Math.round(inUnit("length", gap as Length, "mm"));
  if (diameter < 1 || diameter > largestDrawn) return marked;
  const height = Math.max(9, diameter + 2);
  const beside = stack([
    text(setting, setting.words("card-go"), { width: width - diameter - 6, size: sizes.small }),
    text(setting, setting.words("card-no-go"), { width: width - diameter - 6, size: sizes.small, bold: true, ink: "attention" }),
    text(setting, setting.words("card-true-size", { size: `${diameter}\u00a0mm` }), {
      width: width - diameter - 6,
      size: sizes.tiny,
      ink: "quiet",
    }),
  ]);
  const tall = Math.max(height, beside.height + 1);
  const shank: Block = {
    height: tall,
    tag: "Figure",
    paint(canvas, left, top) {
      const [x, y, radius] = [left + 2 + diameter / 2, top + tall / 2, diameter / 2];
      canvas.circle([x, y], radius, { colour: colours.worked, width: 0.35, round: false });
      canvas.rule([x - radius - 1, y], [x + radius + 1, y], 0.12);
      canvas.rule([x, y - radius - 1], [x, y + radius + 1], 0.12);
      beside.paint(canvas, left + diameter + 6, top + (tall - beside.height) / 2);
    },
  };
  return stack([marked, shank]);
}
