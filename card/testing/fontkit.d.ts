/** What of fontkit the tests ask: it ships no types. */
declare module "fontkit" {
  export function create(bytes: Uint8Array): { hasGlyphForCodePoint(codePoint: number): boolean };
}
