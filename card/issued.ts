/** What is printed about the printing: the card is a record, so whoever issues it says when and with what. */
export interface Issued {
  /** RFC 3339, with its offset; printed as it is given, to the minute. */
  readonly when: string;
  /** Of the program. */
  readonly version: string;
  /** Address of the box, at most 255 characters; without one the card has room for a tag number. */
  readonly boxLink?: string;
}

/** As it was given, without seconds: 2026-03-01 14:05 +01:00. */
export function issuedText(when: string): string {
  const [, date = when, time = "", zone = ""] = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(?::[\d.]+)?(Z|[+-]\d\d:\d\d)?$/u.exec(when) ?? [];
  return [date, time, zone === "Z" ? "UTC" : zone].filter((part) => part !== "").join(" ");
}
