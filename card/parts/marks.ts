import type { PlanInWords, PlanSection } from "@ringwright/words/plan";
import { type Block, space } from "../blocks/block.ts";
import { attention, caution, heading, sizes, text } from "../blocks/text.ts";
import { area, type Setting } from "../setting.ts";

/** What needs a hand and what to mind, as much as there is room for; the rest is for the sheets that follow. */
export function marks(
  setting: Setting,
  { sections }: PlanInWords,
  room: number,
): { readonly shown: readonly Block[]; readonly rest: readonly Block[] } {
  const { width } = area;
  const of = (id: string) => sections.find((section) => section.id === id);
  const hand = of("attention");
  const mind = texts(of("mind")).map((said) => caution(setting, said, width));
  const red = texts(hand).map((said) => attention(setting, said, width));
  const title = hand && text(setting, hand.heading, { width, size: sizes.heading, bold: true, ink: "attention", after: 0.8 });
  const more = (count: number) =>
    text(setting, setting.words("card-more-marks", { count }), { width, ink: "attention", bold: true, after: 0.6 });
  const fixed = [...mind, space(1.5), ...(title ? [title] : [])].reduce((sum, { height }) => sum + height, 0);
  const count = fitting(red, room - fixed, more(red.length).height);
  const rest = red.slice(count);
  return {
    shown: [...(title ? [title] : []), ...red.slice(0, count), ...(rest.length > 0 ? [more(rest.length)] : []), ...mind, space(1.5)],
    rest: rest.length > 0 && hand ? [heading(setting, setting.words("card-continued", { part: hand.heading }), width), ...rest] : [],
  };
}

/** How many blocks go into a room, leaving room for a line that says there are more; one always does. */
function fitting(blocks: readonly Block[], room: number, line: number): number {
  const heights = blocks.map(({ height }) => height);
  if (heights.reduce((sum, height) => sum + height, 0) <= room) return blocks.length;
  let used = line;
  const count = heights.findIndex((height) => {
    used += height;
    return used > room;
  });
  return Math.max(1, count);
}

function texts(section: PlanSection | undefined): readonly string[] {
  return (section?.blocks ?? []).flatMap((block) => (block.kind === "mark" ? [block.text] : []));
}
