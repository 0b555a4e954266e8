/**
 * The faces of the card as font files (TrueType or WOFF 1.0), each a list that
 * is asked in turn for a character: the face itself, what extends it, and last
 * a fallback for the marks that it lacks.
 */
export interface CardFonts {
  readonly words: readonly Uint8Array[];
  readonly wordsBold: readonly Uint8Array[];
  readonly numbers: readonly Uint8Array[];
  readonly numbersBold: readonly Uint8Array[];
}

/** Which files make a face: package and path, for whoever fetches them. */
export const fontFiles: Readonly<Record<keyof CardFonts, readonly string[]>> = {
  words: [next("latin-400"), next("latin-ext-400"), fallback("DejaVuSans")],
  wordsBold: [next("latin-700"), next("latin-ext-700"), fallback("DejaVuSans-Bold")],
  numbers: [mono("latin-400"), mono("latin-ext-400"), fallback("DejaVuSans")],
  numbersBold: [mono("latin-700"), mono("latin-ext-700"), fallback("DejaVuSans-Bold")],
};

function next(cut: string): string {
  return `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-${cut}-normal.woff`;
}

function mono(cut: string): string {
  return `@fontsource/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-${cut}-normal.woff`;
}

function fallback(name: string): string {
  return `dejavu-fonts-ttf/ttf/${name}.ttf`;
}
