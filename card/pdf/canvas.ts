import { type Canvas, colours, type Point, type Run, runsOf, type Stroke, strokeOf, type TextStyle } from "@ringwright/drawings";
import type { PdfDocument } from "./document.ts";
import { points } from "./points.ts";
import type { Typesetter } from "./typesetter.ts";

/** How a line of text is written. */
export interface Writing {
  readonly size: number;
  readonly bold?: boolean;
  readonly ink?: keyof typeof colours;
  readonly anchor?: "start" | "middle" | "end";
}

const hair: Stroke = { colour: colours.quiet, width: 0.12, round: false };

/** A page of a PDF as something to draw on: millimetres from its top left corner, y down. */
export class PdfCanvas implements Canvas {
  readonly doc: PdfDocument;
  readonly type: Typesetter;

  constructor(doc: PdfDocument, type: Typesetter) {
    this.doc = doc;
    this.type = type;
  }

  lines(pieces: readonly (readonly Point[])[], stroke: Stroke, closed: boolean): void {
    if (!(stroke.width > 0)) return;
    const { doc } = this;
    doc.save();
    this.#pen(stroke);
    this.#trace(pieces, closed);
    doc.stroke();
    doc.restore();
  }

  area(pieces: readonly (readonly Point[])[], colour: string): void {
    const { doc } = this;
    doc.save();
    doc.fillColor(colour);
    this.#trace(pieces, true);
    doc.fill();
    doc.restore();
  }

  circle([x, y]: Point, radius: number, stroke: Stroke): void {
    const { doc } = this;
    doc.save();
    this.#pen(stroke);
    doc.circle(points(x), points(y), points(radius));
    doc.stroke();
    doc.restore();
  }

  text(runs: readonly Run[], [x, y]: Point, { size, colour, anchor = "start", turned = false }: TextStyle): void {
    const { doc, type } = this;
    const width = type.widthOf(runs, size);
    let along = x - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
    doc.save();
    if (turned) doc.rotate(-90, { origin: [points(x), points(y)] });
    doc.fillColor(colour);
    for (const piece of runs.flatMap((run) => type.pieces(run))) {
      const wide = type.pieceWidth(piece) * size;
      doc.font(piece.font);
      doc.fontSize(points(size));
      if (piece.text.trim() !== "") doc.text(piece.text, points(along), points(y), { lineBreak: false, baseline: "alphabetic" });
      along += wide;
    }
    doc.restore();
  }

  /** One line of words, its baseline at a point; what was measured gets its dotted line. */
  write(text: string, [x, y]: Point, { size, bold = false, ink = "worked", anchor = "start" }: Writing): void {
    const runs = runsOf(text, bold);
    this.text(runs, [x, y], { size, colour: colours[ink], anchor });
    if (ink !== "measured" || text === "") return;
    const width = this.type.widthOf(runs, size);
    const from = x - (anchor === "start" ? 0 : anchor === "end" ? width : width / 2);
    const under = y + 0.24 * size;
    const dots: readonly Point[] = [
      [from, under],
      [from + width, under],
    ];
    this.lines([dots], strokeOf({ layer: "thin", ink, role: "underline" }), false);
  }

  /** A ruled line. */
  rule(from: Point, to: Point, width = hair.width, colour = hair.colour): void {
    this.lines([[from, to]], { colour, width, round: false }, false);
  }

  /** The edge of a rectangle. */
  frame([x, y]: Point, [width, height]: Point, pen = hair.width, colour: string = colours.worked): void {
    const corners: readonly Point[] = [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ];
    this.lines([corners], { colour, width: pen, round: false }, true);
  }

  #pen({ colour, width, dash, round }: Stroke): void {
    const { doc } = this;
    doc.strokeColor(colour);
    doc.lineWidth(points(width));
    doc.lineJoin("round");
    doc.lineCap(round ? "round" : "butt");
    if (dash !== undefined) doc.dash(dash.split(" ").map((length) => points(Number(length))));
  }

  #trace(pieces: readonly (readonly Point[])[], closed: boolean): void {
    const { doc } = this;
    for (const piece of pieces) {
      for (const [i, [x, y]] of piece.entries()) {
        if (i === 0) doc.moveTo(points(x), points(y));
        else doc.lineTo(points(x), points(y));
      }
      if (closed) doc.closePath();
    }
  }
}
