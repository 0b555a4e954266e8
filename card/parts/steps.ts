import { colours } from "@ringwright/drawings";
import type { StepGroupText, StepText } from "@ringwright/words/plan";
import { type Block, stack } from "../blocks/block.ts";
import { caution, firstBaseline, heading, sizes, text, writingLine } from "../blocks/text.ts";
import type { Flow } from "../pdf/flow.ts";
import type { Setting } from "../setting.ts";

/** Columns of a step: number and tick box, what to do, what to expect, what to write. */
const at = { tick: 8.5, words: 15.5, hints: 98, write: 136 } as const;
const tickSize = 3.9;

/** Every step of the groups, each under its cautions and never parted from them. */
export function steps(flow: Flow, setting: Setting, groups: readonly StepGroupText[], width: number): void {
  for (const { title, steps: list } of groups) {
    const again = text(setting, setting.words("card-continued", { part: title }), { width, size: sizes.small, ink: "quiet", after: 1 });
    const blocks = list.map((step) => stepBlock(setting, step, width));
    const [first, ...more] = blocks;
    if (!first) continue;
    flow.together([heading(setting, title, width), first]);
    flow.repeat(again);
    // The last two go together: a single step over the page is overlooked.
    for (const block of more.slice(0, -2)) flow.together([block]);
    flow.together(more.slice(-2));
    flow.repeat(undefined);
    flow.gap(3);
  }
}

/** A step with the cautions that guard it directly above, as one. */
export function stepBlock(setting: Setting, step: StepText, width: number): Block {
  return stack([...step.cautions.map((words) => caution(setting, words, width)), stepLine(setting, step, width)]);
}

function stepLine(
  setting: Setting,
  { number, text: words, bridge, hints, blanks, choices, asksNumber, unit }: StepText,
  width: number,
): Block {
  const said = text(setting, words, { width: (hints.length > 0 ? at.hints : at.write) - at.words - 2, size: sizes.body });
  const expect = stack(hints.map((hint) => text(setting, hint, { width: at.write - at.hints - 2, size: sizes.small })));
  const room = width - at.write;
  const write = stack([
    ...blanks.map((blank) => writingLine(setting, blank, room)),
    ...(choices.length > 0 ? choices.map((choice) => choiceLine(setting, choice, room)) : []),
    ...(asksNumber ? [writingLine(setting, "", room, unit)] : []),
  ]);
  const height = Math.max(tickSize + 0.6, said.height, expect.height, write.height) + 1.5;
  return {
    height,
    tag: "P",
    paint(canvas, left, top) {
      const inside = top + 0.6;
      canvas.write(String(number), [left + 5.5, inside + firstBaseline * sizes.body], { size: sizes.body, bold: !bridge, anchor: "end" });
      if (!bridge) canvas.write("■", [left + 5.9, inside + firstBaseline * sizes.body - 0.15], { size: 2 });
      canvas.frame([left + at.tick, inside], [tickSize, tickSize], bridge ? 0.2 : 0.6);
      said.paint(canvas, left + at.words, inside);
      expect.paint(canvas, left + at.hints, inside);
      write.paint(canvas, left + at.write, inside - 0.4);
      canvas.rule([left, top + height - 0.25], [left + width, top + height - 0.25], 0.08, colours.quiet);
    },
  };
}

/** A small round to mark beside a choice. */
function choiceLine(setting: Setting, choice: string, width: number): Block {
  const said = text(setting, choice, { width: width - 5, size: sizes.body });
  const height = said.height + 1;
  return {
    height,
    tag: "P",
    paint(canvas, left, top) {
      canvas.circle([left + 1.6, top + 1 + 0.5 * sizes.body], 1.4, { colour: colours.worked, width: 0.2, round: false });
      said.paint(canvas, left + 4.6, top + 0.8);
    },
  };
}
