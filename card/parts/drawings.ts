import type { Plan } from "@ringwright/core/plan";
import { type Drawing, drawJointClock, jointClockOfPlan } from "@ringwright/drawings";
import { type Block, beside, space, stack } from "../blocks/block.ts";
import { heading } from "../blocks/text.ts";
import { area, type Setting } from "../setting.ts";
import { asWide, atListedScale, figure, scaleLine, scaleLineHeight } from "./box-drawing.ts";

const gutter = 5;
const sideWidth = 58;

export interface DrawingsWish {
  readonly box: Drawing;
  /** What stands under the joint clock. */
  readonly under?: (width: number) => Block;
}

/** The least room that drawings take with a column beside them, mm. */
export function leastRoom(setting: Setting, plan: Plan, wish: DrawingsWish): number {
  return sideOf(setting, plan, wish).reduce((sum, { height }) => sum + height, 0) + scaleLineHeight;
}

/** The box in section at a listed scale in so much room, and beside it the joint clock and what stands under that. */
export function drawings(setting: Setting, plan: Plan, wish: DrawingsWish, room: number): Block {
  const { width } = area;
  const side = sideOf(setting, plan, wish);
  const wide = width - (side.length > 0 ? sideWidth + gutter : 0);
  const laid = atListedScale(setting, wish.box, wide, room - scaleLineHeight);
  const section = figure(laid ?? asWide(setting, wish.box, wide), wide);
  const columns = beside([{ at: 0, block: section }, ...(side.length > 0 ? [{ at: width - sideWidth, block: stack(side) }] : [])]);
  return stack([columns, scaleLine(setting, laid && laid.scale * laid.shrunk, width)], "Figure", section.alt);
}

function sideOf(setting: Setting, plan: Plan, { under }: DrawingsWish): readonly Block[] {
  const clock = jointClockOfPlan(plan);
  return [
    ...(clock
      ? [
          heading(setting, setting.words("card-clock"), sideWidth),
          space(1),
          figure(asWide(setting, drawJointClock(clock), sideWidth), sideWidth),
        ]
      : []),
    ...(under ? [space(2), under(sideWidth)] : []),
  ];
}
