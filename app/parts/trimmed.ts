/** A figure with its unit, without the noughts that only fill up its digits. */
export function trimmed(figure: string): string {
  return figure.replace(/^(\D*\d+)(?:\.0+|(\.\d*?[1-9])0+)(?=\D|$)/u, "$1$2");
}
