import type { Plan } from "@ringwright/core/plan";
import { type Drawing, drawJointClock, jointClockOfPlan } from "@ringwright/drawings";
import { type Block, beside, space, stack } from "../blocks/block.ts";
import { heading } from "../blocks/text.ts";
import { area, type Setting } from "../setting.ts";
import { asWide, atListedScale, figure, scaleLine, scaleLineHeight } from "./box-drawing.ts";

const gutter = 5;
const sideWidth = 58;
const usualRoom = 105;

interface Drawings {
  /** The room in which most boxes stand at 1:2, mm. */
  readonly wished: number;
  /** The drawings in so much room; the lantern ring beside them where it goes in. */
  fit(room: number): { readonly block: Block; readonly lanternShown: boolean };
}

/** The box in section at a listed scale, and beside it the joint clock and the lantern ring. */
export function drawings(setting: Setting, plan: Plan, box: Drawing, lantern: ((width: number) => Block) | undefined): Drawings {
  const { width } = area;
  const clock = jointClockOfPlan(plan);
  const side = clock
    ? [
        heading(setting, setting.words("card-clock"), sideWidth),
        space(1),
        figure(asWide(setting, drawJointClock(clock), sideWidth), sideWidth),
      ]
    : [];
  const full = lantern ? [...side, space(2), lantern(sideWidth)] : side;
  const high = (blocks: readonly Block[]) => blocks.reduce((sum, { height }) => sum + height, 0);
  return {
    wished: Math.max(usualRoom, high(full)) + scaleLineHeight,
    fit(room) {
      const height = room - scaleLineHeight;
      const lanternShown = lantern !== undefined && high(full) <= height;
      const column = lanternShown ? full : side;
      const wide = width - (column.length > 0 ? sideWidth + gutter : 0);
      const laid = atListedScale(setting, box, wide, height);
      const section = figure(laid ?? asWide(setting, box, wide), wide);
      const columns = beside([{ at: 0, block: section }, ...(column.length > 0 ? [{ at: width - sideWidth, block: stack(column) }] : [])]);
      const scale = scaleLine(setting, laid && laid.scale * laid.shrunk, width);
      return { block: stack([columns, scale], "Figure", section.alt), lanternShown };
    },
  };
}
