/** Now, milliseconds since 1970, by this device. */
export function now(): number {
  return Date.now();
}

/** A time as RFC 3339 with this device's own offset from UTC: 2031-04-30T14:05:09.120+02:00. */
export function rfc3339(ms: number): string {
  const offset = -new Date(ms).getTimezoneOffset();
  const local = new Date(ms + offset * 60_000).toISOString().slice(0, -1);
  const [hours, minutes] = [Math.trunc(Math.abs(offset) / 60), Math.abs(offset) % 60];
  return `${local}${offset < 0 ? "-" : "+"}${two(hours)}:${two(minutes)}`;
}

function two(number: number): string {
  return String(number).padStart(2, "0");
}
