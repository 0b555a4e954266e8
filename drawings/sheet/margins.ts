import { inUnit, quantity } from "@ringwright/core/units";
import type { Drawing, Label, Note, Point } from "../shapes.ts";
import { runsOf, runsWidth, wrap } from "../text/runs.ts";
import { chalkBar } from "./callouts.ts";
import { extentOf, nothing, type Placed, placeLine, placeText, together } from "./placed.ts";
import { type Style, words } from "./style.ts";

/** Title and subtitle above `bottom`, from `left`, no wider than `width`. */
export function placeHeading(drawing: Drawing, left: number, bottom: number, width: number, style: Style): Placed {
  const { size } = style;
  let placed = nothing;
  let y = bottom + 1.2 * size;
  const stack = (id: string, text: string, font: number, ink: Note["ink"], bold: boolean) => {
    const lines = wrap(text, width, font, bold);
    for (const [i, line] of [...lines.entries()].reverse()) {
      placed = together(
        placed,
        placeText({ id: i === 0 ? id : `${id}-${i + 1}`, runs: runsOf(line, bold), at: [left, y], anchor: "start", size: font, ink }),
      );
      y += 1.35 * font;
    }
  };
  if (drawing.subtitle !== undefined) stack("subheading", words(style, drawing.subtitle), size, "quiet", false);
  y += 0.25 * size;
  stack("heading", words(style, drawing.title), 1.35 * size, "worked", true);
  return placed;
}

interface Item {
  readonly width: number;
  readonly place: (at: Point) => Placed;
}

/** The scale bar and the key, then what found no room on the drawing at its own end, then the notes, under `top`. */
export function placeFooter(
  drawing: Drawing,
  homeless: readonly Label[],
  scale: number,
  stated: string | undefined,
  [left, top]: Point,
  width: number,
  style: Style,
): Placed {
  const { size } = style;
  const items: Item[] = [];
  if (drawing.toScale) items.push(scaleBar(scale, stated, style), ...key(drawing, style));
  let [x, y] = [left, top - 1.3 * size];
  let placed = nothing;
  const newLine = () => {
    x = left;
    y -= 1.45 * size;
  };
  for (const item of items) {
    if (x > left && x + item.width > left + width) newLine();
    placed = together(placed, item.place([x, y]));
    x += item.width + 1.4 * size;
  }
  const ends = homeless.filter(({ place }) => place === "inside");
  if (ends.length > 0 && x > left) newLine();
  for (const { id, lines, anchor } of ends) {
    const said = lines.map(({ text }) => words(style, text)).join(" ");
    const runs = runsOf(anchor === "end" ? `${said} →` : `← ${said}`);
    placed = together(placed, placeText({ id, runs, at: [anchor === "end" ? left + width : left, y], anchor, size, ink: "quiet" }));
    x = left + width;
  }
  const led = homeless
    .filter(({ place }) => place === "above")
    .flatMap(({ id, lines }) => lines.map((line, i): Note => ({ ...line, id: `${id}-${i + 1}` })));
  if (x > left && led.length + drawing.notes.length > 0) {
    newLine();
    y -= 0.25 * size;
  }
  for (const { id, text, ink, bold } of [...led, ...drawing.notes]) {
    const indent = ink === "attention" ? 0.8 * size : 0;
    for (const [i, line] of wrap(words(style, text), width - indent, size, bold).entries()) {
      const one = placeText({
        id: i === 0 ? id : `${id}-${i + 1}`,
        runs: runsOf(line, bold),
        at: [left + indent, y],
        anchor: "start",
        size,
        ink,
      });
      placed = together(placed, one, ink === "attention" ? chalkBar(extentOf(one), size) : nothing);
      y -= 1.45 * size;
    }
  }
  return placed;
}

/** A length of the real thing that is a round number and easy to lay a rule against. */
function scaleBar(scale: number, stated: string | undefined, style: Style): Item {
  const { size, show } = style;
  const unit = show.system === "metric" ? "mm" : "in";
  const inMm = (value: number) => inUnit("length", quantity("length", value, unit), "mm");
  const round = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];
  const length = round.find((value) => inMm(value) * scale >= 3.5 * size) ?? 1000;
  const bar = inMm(length) * scale;
  const runs = runsOf(`${length}\u00a0${unit}${stated ? `, ${stated}` : ""}`);
  return {
    width: bar + 0.5 * size + runsWidth(runs, size),
    place: ([x, y]) => {
      const tick = (at: number): readonly Point[] => [
        [at, y - 0.3 * size],
        [at, y + 0.3 * size],
      ];
      const line: readonly Point[] = [
        [x, y],
        [x + bar, y],
      ];
      return together(
        { ...nothing, paths: [placeLine("shape", "worked", [tick(x), line, tick(x + bar)])] },
        placeText({ id: "scale-bar", runs, at: [x + bar + 0.5 * size, y], anchor: "start", size, ink: "quiet" }),
      );
    },
  };
}

/** Which ink means what, where both are used; the measured one has its dotted line. */
function key({ dimensions, labels }: Drawing, style: Style): readonly Item[] {
  const used = new Set([...dimensions.map(({ ink }) => ink), ...labels.flatMap(({ lines }) => lines.map(({ ink }) => ink))]);
  return !used.has("measured")
    ? []
    : (["measured", "worked"] as const).map((ink): Item => {
        const runs = runsOf(words(style, { id: `drawing-key-${ink}` }));
        return {
          width: runsWidth(runs, style.size),
          place: (at) => placeText({ id: `key-${ink}`, runs, at, anchor: "start", size: style.size, ink }),
        };
      });
}
