import type { Label, Point } from "../shapes.ts";
import { reading } from "../text/reading.ts";
import { type Run, runsOf, runsWidth, wrap } from "../text/runs.ts";
import type { ToPaper } from "./paper.ts";
import { nothing, type Placed, placeLine, placeText, together } from "./placed.ts";
import { type Style, words } from "./style.ts";

/** Text sizes from a flag's pole to its words, and the room that is kept round words. */
const stand = 0.45;
const apart = 0.3;
const lineHeight = 1.4;
/** A flag takes no more than this part of its page, and within so many text sizes. */
const most = { share: 0.42, narrow: 8.5, wide: 22 } as const;

interface Flag {
  readonly label: Label;
  readonly foot: Point;
  readonly lines: readonly (readonly Run[])[];
  readonly width: number;
}

/** A flag with the side its words are on and the stretch of its row that they take. */
interface Flown extends Flag {
  readonly side: 1 | -1;
  readonly from: number;
  readonly to: number;
}

/**
 * Labels on poles above or below a ruler, each pole at its place along it and
 * the words beside the pole, in as few rows as it takes that no words meet and
 * no pole runs through any. Poles to the left fly their words to the right and
 * those to the right may fly them to the left, whatever keeps within
 * `[left, right]`.
 */
export function placeFlags(
  labels: readonly Label[],
  place: "over" | "under",
  toPaper: ToPaper,
  [left, right]: readonly [number, number],
  edge: number,
  style: Style,
): Placed {
  const { size } = style;
  const flags = labels
    .filter((label) => label.place === place)
    .map((label) => flagOf(label, toPaper, style))
    .sort((a, b) => a.foot[0] - b.foot[0]);
  if (flags.length === 0) return nothing;
  const { flown, rows } = best(flags, left, right, size);
  const tall = Array.from({ length: Math.max(...rows) + 1 }, (_, row) =>
    Math.max(1, ...flown.filter((_, i) => rows[i] === row).map(({ lines }) => lines.length)),
  );
  const outwards = place === "over" ? 1 : -1;
  return together(
    ...flown.map((flag, i) => {
      const row = rows[i] ?? 0;
      const before = tall.slice(0, row).reduce((sum, lines) => sum + lines, 0);
      const near = edge + outwards * (1.3 + lineHeight * before + 0.25 * row) * size;
      // The first line stands highest on either side of the ruler.
      const first = place === "over" ? near + (flag.lines.length - 1) * lineHeight * size : near;
      return placeFlag(flag, first, near, size);
    }),
  );
}

function flagOf(label: Label, toPaper: ToPaper, style: Style): Flag {
  const widest = Math.min(most.wide, Math.max(most.narrow, most.share * (style.wide ?? Number.POSITIVE_INFINITY)));
  const lines = label.lines.flatMap((line) => {
    const figure = line.reading === undefined ? "" : reading(line.reading, style.show.system);
    const text = [figure, words(style, line.text)].filter((one) => one !== "").join(" ");
    return wrap(text, widest * style.size, style.size, line.bold).map((one) => runsOf(one, line.bold));
  });
  return { label, foot: toPaper(label.at), lines, width: Math.max(...lines.map((runs) => runsWidth(runs, style.size))) };
}

function flying(flag: Flag, side: 1 | -1, size: number): Flown {
  const near = flag.foot[0] + side * stand * size;
  const far = near + side * flag.width;
  return { ...flag, side, from: Math.min(near, far), to: Math.max(near, far) };
}

/** The way of flying that reaches least beyond the page, and of those the one with the fewest rows. */
function best(flags: readonly Flag[], left: number, right: number, size: number) {
  let chosen: { readonly flown: readonly Flown[]; readonly rows: readonly number[]; readonly cost: number } | undefined;
  for (let split = flags.length; split >= 0; split--) {
    const flown = flags.map((flag, i) => flying(flag, i < split ? 1 : -1, size));
    const rows = rowsOf(flown, size);
    if (!rows) continue;
    const beyond = Math.max(0, ...flown.map(({ to }) => to - right)) + Math.max(0, ...flown.map(({ from }) => left - from));
    const cost = beyond + 0.01 * size * Math.max(...rows);
    if (chosen === undefined || cost < chosen.cost - 1e-9) chosen = { flown, rows, cost };
  }
  // With all words to the right each pole only has to end above the words of those left of it: that can always be done.
  return chosen ?? { flown: [], rows: [] };
}

/** A row for each flag, nearest first; nothing where two poles would run through each other's words. */
function rowsOf(flown: readonly Flown[], size: number): readonly number[] | undefined {
  const rows: (number | undefined)[] = flown.map(() => undefined);
  const gap = apart * size;
  const runsThrough = (pole: Flown, text: Flown) => pole !== text && pole.foot[0] > text.from - gap / 2 && pole.foot[0] < text.to + gap / 2;
  const nearer = flown.map((flag) => flown.flatMap((other, i) => (runsThrough(other, flag) ? [i] : [])));
  for (let placed = 0; placed < flown.length; placed++) {
    const next = flown.findIndex((_, i) => rows[i] === undefined && nearer[i]?.every((one) => rows[one] !== undefined));
    const flag = flown[next];
    if (!flag) return undefined;
    let row = Math.max(-1, ...(nearer[next] ?? []).map((one) => rows[one] ?? 0)) + 1;
    const taken = (at: number) => flown.some((other, i) => rows[i] === at && other.from < flag.to + gap && flag.from < other.to + gap);
    while (taken(row)) row++;
    rows[next] = row;
  }
  return rows.map((row) => row ?? 0);
}

function placeFlag({ label, foot, lines, side }: Flown, first: number, near: number, size: number): Placed {
  const [x] = foot;
  const end = label.place === "over" ? first : near;
  const texts = lines.map((runs, i) =>
    placeText({
      id: i === 0 ? label.id : `${label.id}-${i + 1}`,
      runs,
      at: [x + side * stand * size, first - i * lineHeight * size],
      anchor: side > 0 ? "start" : "end",
      size,
      ink: label.lines[0]?.ink ?? "worked",
    }),
  );
  const pole = placeLine("leader", "quiet", [[foot, [x, end]]]);
  return together(...texts, { ...nothing, paths: [pole] });
}
