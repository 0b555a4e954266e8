import Document from "pdfkit";
import type { PdfDocument } from "../index.ts";

/** A document with one page, to draw on. */
export function emptyDocument(): PdfDocument {
  const doc = new Document({
    autoFirstPage: false,
    bufferPages: true,
    compress: false,
    pdfVersion: "1.7",
    tagged: true,
    lang: "en",
    displayTitle: true,
    font: null,
    info: { Title: "test", CreationDate: new Date(0) },
  });
  doc.addPage({ size: [600, 800], margin: 0 });
  return doc;
}
