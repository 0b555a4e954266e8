import type { Plan } from "@ringwright/core/plan";
import { type Drawing, drawJointClock, jointClockOfPlan } from "@ringwright/drawings";
import { type Block, beside, space, stack } from "../blocks/block.ts";
import { heading } from "../blocks/text.ts";
import { area, type Setting } from "../setting.ts";
import { asWide, atListedScale, figure, scaleLine, scaleLineHeight } from "./box-drawing.ts";

const gutter = 5;
const sideWidth = 58;
/** A whole drawing drawn smaller than this has texts too small to read. */
const leastShrunk = 0.88;

/** The drawings of the first sheet as they come out in some room. */
export interface Drawn {
  readonly block: Block;
  /** Whether the box stands at a listed scale, its texts large enough to read. */
  readonly readable: boolean;
}

/**
 * The box in section at a listed scale, beside it the joint clock with what
 * stands under that: laid out for a room so high, or none where the column
 * beside the box doesn't go into it.
 */
export function drawingsIn(
  setting: Setting,
  plan: Plan,
  box: Drawing,
): (room: number, under?: (width: number) => Block) => Drawn | undefined {
  const { width } = area;
  const clock = jointClockOfPlan(plan);
  const clockBlocks = clock
    ? [
        heading(setting, setting.words("card-clock"), sideWidth),
        space(1),
        figure(asWide(setting, drawJointClock(clock), sideWidth), sideWidth),
      ]
    : [];
  return (room, under) => {
    const side = stack([...clockBlocks, ...(under ? [space(2), under(sideWidth)] : [])]);
    const height = room - scaleLineHeight;
    if (side.height > height) return undefined;
    const wide = width - (side.height > 0 ? sideWidth + gutter : 0);
    const laid = atListedScale(setting, box, wide, height);
    const section = figure(laid ?? asWide(setting, box, wide), wide);
    const columns = beside([
      { at: 0, block: section },
      { at: width - sideWidth, block: side },
    ]);
    return {
      block: stack([columns, scaleLine(setting, laid && laid.scale * laid.shrunk, width)], "Figure", section.alt),
      readable: laid !== undefined && laid.shrunk >= leastShrunk,
    };
  };
}
