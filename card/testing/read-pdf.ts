import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A PDF as another program reads it, in millimetres from the top left corner of each page. */
export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly language: string;
  readonly title: string;
  readonly tagged: boolean;
}

interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** All text in the order in which it was drawn, without any white space. */
  readonly text: string;
  readonly strokes: readonly Stroke[];
  /** Names of the operators used. */
  readonly operators: ReadonlySet<string>;
}

/** A straight piece of a stroked path. */
export interface Stroke {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly width: number;
}

const millimetres = (points: number) => (points * 25.4) / 72;
type Matrix = readonly [number, number, number, number, number, number];

const then = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

/** Reads a PDF by a program that knows nothing of ours. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const doc = await getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= doc.numPages; number++) {
    const page = await doc.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent({ disableNormalization: true });
    const list = await page.getOperatorList();
    pages.push({
      width: millimetres(width),
      height: millimetres(height),
      text: bare(items.map((item) => ("str" in item ? item.str : "")).join("")),
      strokes: strokesOf(list, height),
      operators: new Set(Object.entries(OPS).flatMap(([name, code]) => (list.fnArray.includes(code) ? [name] : []))),
    });
  }
  const [{ info }, marks] = [await doc.getMetadata(), await doc.getMarkInfo()];
  const said = info as Readonly<Record<string, unknown>>;
  await doc.destroy();
  return { pages, language: String(said.Language), title: String(said.Title), tagged: marks?.Marked === true };
}

/** A text without its white space, which a page sets as it likes. */
export function bare(text: string): string {
  return text.replace(/\s+/gu, "");
}

/** Codes of a path's steps: how many numbers follow each. */
const follow: Readonly<Record<number, number>> = { 0: 2, 1: 2, 2: 6, 3: 4, 4: 0 };

function strokesOf({ fnArray, argsArray }: { fnArray: readonly number[]; argsArray: readonly unknown[] }, height: number): Stroke[] {
  const strokes: Stroke[] = [];
  const saved: { matrix: Matrix; width: number }[] = [];
  let [matrix, width]: [Matrix, number] = [[1, 0, 0, 1, 0, 0], 1];
  for (const [i, code] of fnArray.entries()) {
    const args = argsArray[i] as readonly unknown[];
    if (code === OPS.save) saved.push({ matrix, width });
    else if (code === OPS.restore) ({ matrix, width } = saved.pop() ?? { matrix, width });
    else if (code === OPS.transform) matrix = then(matrix, args as unknown as Matrix);
    else if (code === OPS.setLineWidth) width = Number(args[0]);
    else if (code === OPS.constructPath && (args[0] === OPS.stroke || args[0] === OPS.closeStroke)) {
      const [data] = args[1] as readonly Float32Array[];
      if (data) strokes.push(...piecesOf(data, matrix, height, width));
    }
  }
  return strokes;
}

function piecesOf(data: Float32Array, matrix: Matrix, height: number, width: number): Stroke[] {
  const place = (x: number, y: number): [number, number] => [
    millimetres(matrix[0] * x + matrix[2] * y + matrix[4]),
    millimetres(height - (matrix[1] * x + matrix[3] * y + matrix[5])),
  ];
  const pieces: Stroke[] = [];
  const line = (from: [number, number], to: [number, number]) => pieces.push({ from, to, width: millimetres(width) });
  let first: [number, number] = [0, 0];
  let last = first;
  for (let at = 0; at < data.length; ) {
    const step = data[at] ?? 0;
    const size = follow[step] ?? 0;
    if (size > 0) {
      const next = place(data[at + size - 1] ?? 0, data[at + size] ?? 0);
      if (step === 1) line(last, next);
      if (step === 0) first = next;
      last = next;
    } else {
      line(last, first);
      last = first;
    }
    at += 1 + size;
  }
  return pieces;
}
