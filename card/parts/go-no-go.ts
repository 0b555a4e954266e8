import { answerOf, type Plan } from "@ringwright/core/plan";
import { inUnit } from "@ringwright/core/units";
import { colours } from "@ringwright/drawings";
import { type Block, stack } from "../blocks/block.ts";
import { attention, sizes, text } from "../blocks/text.ts";
import type { Setting } from "../setting.ts";

/** Largest drill shank that is drawn in its true size, mm. */
const largestDrawn = 20;

/** When to repack, with the drill shank that tells, round and in its true size where it has room. */
export function goNoGo(setting: Setting, plan: Plan, words: string, width: number): Block {
  const gap = answerOf(plan.rings.set)?.lantern?.limit?.repackGap;
  const marked = attention(setting, words, width);
  const diameter = gap === undefined ? 0 : Math.round(inUnit("length", gap, "mm"));
  if (diameter < 1 || diameter > largestDrawn) return marked;
  const room = width - diameter - 6;
  const beside = stack([
    text(setting, setting.words("card-go"), { width: room, size: sizes.small }),
    text(setting, setting.words("card-no-go"), { width: room, size: sizes.small, bold: true, ink: "attention" }),
    text(setting, setting.words("card-true-size", { size: `${diameter}\u00a0mm` }), { width: room, size: sizes.small, ink: "quiet" }),
  ]);
  const height = Math.max(diameter + 3, beside.height + 1);
  const shank: Block = {
    height,
    tag: "Figure",
    paint(canvas, left, top) {
      const [x, y, radius] = [left + 2 + diameter / 2, top + height / 2, diameter / 2];
      canvas.circle([x, y], radius, { colour: colours.worked, width: 0.35, round: false });
      canvas.rule([x - radius - 1, y], [x + radius + 1, y], 0.12);
      canvas.rule([x, y - radius - 1], [x, y + radius + 1], 0.12);
      beside.paint(canvas, left + diameter + 6, top + (height - beside.height) / 2);
    },
  };
  return stack([marked, shank]);
}
