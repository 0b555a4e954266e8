/**
 * What of the PDF library the card uses. The library itself is handed in by
 * whoever prints: its Node build on a desk, its standalone build in a browser.
 */
export interface PdfDocument {
  addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): unknown;
  switchToPage(index: number): unknown;
  registerFont(name: string, bytes: Uint8Array): unknown;
  font(name: string): unknown;
  fontSize(size: number): unknown;
  widthOfString(text: string): number;
  text(text: string, x: number, y: number, options: { readonly lineBreak: false; readonly baseline: "alphabetic" }): unknown;
  save(): unknown;
  restore(): unknown;
  rotate(degrees: number, options: { readonly origin: readonly [number, number] }): unknown;
  moveTo(x: number, y: number): unknown;
  lineTo(x: number, y: number): unknown;
  closePath(): unknown;
  circle(x: number, y: number, radius: number): unknown;
  rect(x: number, y: number, width: number, height: number): unknown;
  lineWidth(width: number): unknown;
  lineCap(style: "butt" | "round"): unknown;
  lineJoin(style: "round" | "miter"): unknown;
  dash(lengths: readonly number[]): unknown;
  strokeColor(colour: string): unknown;
  fillColor(colour: string): unknown;
  stroke(): unknown;
  fill(): unknown;
  struct(type: string, options: { readonly alt?: string }, children?: readonly unknown[]): Structure;
  addStructure(structure: Structure): unknown;
  markStructureContent(type: string): unknown;
  markContent(type: string, options?: { readonly type: string }): unknown;
  endMarkedContent(): unknown;
  on(event: "data", listener: (bytes: Uint8Array) => void): unknown;
  on(event: "end", listener: () => void): unknown;
  on(event: "error", listener: (error: Error) => void): unknown;
  end(): void;
  /** The font that is set now, as the library opened it: it knows which characters it has. */
  readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
}

/** A node of the tree by which a screen reader follows the card. */
export interface Structure {
  add(child: unknown): unknown;
  end(): unknown;
}

interface PdfOptions {
  readonly autoFirstPage: false;
  readonly bufferPages: true;
  readonly compress: boolean;
  readonly pdfVersion: "1.7";
  readonly tagged: true;
  readonly lang: string;
  readonly displayTitle: true;
  readonly font: null;
  readonly info: Readonly<Record<string, string | Date>>;
}

export type PdfConstructor = new (options: PdfOptions) => PdfDocument;

/** All bytes of a document, once it has been ended. */
export function bytesOf(doc: PdfDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on("data", (bytes) => chunks.push(bytes));
    doc.on("error", reject);
    doc.on("end", () => {
      const all = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
      let at = 0;
      for (const chunk of chunks) {
        all.set(chunk, at);
        at += chunk.length;
      }
      resolve(all);
    });
  });
}
