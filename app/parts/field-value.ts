import type { FieldValue, Measured, Planes } from "@ringwright/logbook";
import type { Words } from "./words.ts";

/** Fields that say something in a person's own words. */
const ownWords: ReadonlySet<string> = new Set(["name", "place", "machine", "position", "tag", "studs.thread", "studs.propertyClass"]);
/** Fields whose choices the screens put as a question of their own. */
const asked: ReadonlySet<string> = new Set(["motion", "release", "zone"]);

/** What a field of a box is called. */
export function fieldName(field: string, words: Words): string {
  const id = `field-${field}`;
  const said = words(id);
  return said === id ? words.called(field) : said;
}

/** The value of a field as a person reads it: numbers as they were typed, choices in words. */
export function fieldValue(field: string, value: FieldValue, words: Words): string {
  if (value === null || value === "unknown") return words("entry-dont-know");
  if (typeof value === "boolean") return words(value ? "entry-yes" : "entry-no");
  if (typeof value === "number") return String(value);
  if (typeof value === "string") {
    if (ownWords.has(field)) return value;
    return asked.has(field) ? words(`app-${field}-${value}`) : words.called(value);
  }
  if (Array.isArray(value))
    return (value as readonly (string | Measured)[]).map((one) => (typeof one === "string" ? words.called(one) : one.typed)).join(", ");
  if ("value" in value) return value.typed;
  const { readings = [], planes = [readings], how } = value as Partial<Planes>;
  const said = planes.map((plane) => plane.map(({ typed }) => typed).join(", ")).join("; ");
  return how === undefined ? said : `${said}, ${words("entry-by-how", { typed: words.called(how) })}`;
}

/** A measured quantity or a count as it was typed. */
export function foundValue(found: null | boolean | number | string | Measured | readonly Measured[], words: Words): string {
  if (found === true) return words("entry-done");
  if (found === false) return words("entry-no");
  if (found === null) return words("entry-dont-know");
  if (typeof found === "number") return String(found);
  if (typeof found === "string") return words.called(found);
  return Array.isArray(found) ? (found as readonly Measured[]).map(({ typed }) => typed).join(", ") : (found as Measured).typed;
}
