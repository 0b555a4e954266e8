/** A name at the head of a line, with a capital; one such as pH stays as it is. */
export function capital(name: string): string {
  return /^\p{Ll}\p{Lu}/u.test(name) ? name : `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}
