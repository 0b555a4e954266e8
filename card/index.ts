export { type CardOptions, drawCard } from "./draw-card.ts";
export type { Issued } from "./issued.ts";
export type { PdfConstructor, PdfDocument } from "./pdf/document.ts";
export { type CardFonts, fontFiles } from "./pdf/fonts.ts";
export type { Paper } from "./setting.ts";
