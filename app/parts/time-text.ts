/** A time as it was on the clock where it was written: 2031-04-30 14:05. */
export function timeText(rfc3339: string): string {
  const [, day = rfc3339, time = ""] = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d)/u.exec(rfc3339) ?? [];
  return `${day} ${time}`.trim();
}
