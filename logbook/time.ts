const rfc3339 = /^(\d{4}-\d{2}-\d{2})T(\d{2}):(\d{2}):(\d{2})(?:\.(\d{1,9}))?(?:Z|([+-])(\d{2}):(\d{2}))$/u;
const day = /^(\d{4})-(\d{2})-(\d{2})$/u;
const minute = 60_000;
/** 400 years. */
const cycle = 146_097 * 24 * 60 * minute;

/**
 * Date and time with offset, as RFC 3339 writes them, in milliseconds since
 * 1970; not a number for what is none. Read here and not by the engine, since
 * engines quarrel over a 30 February, and all devices must read the same.
 */
export function timeOf(text: string): number {
  const found = rfc3339.exec(text);
  if (!found) return Number.NaN;
  const [, date = "", hours, minutes, seconds, fraction = "", sign, aheadHours = 0, aheadMinutes = 0] = found;
  const [hour, min, second, ahead, aheadMin] = [Number(hours), Number(minutes), Number(seconds), Number(aheadHours), Number(aheadMinutes)];
  if (hour > 23 || min > 59 || second > 59 || ahead > 23 || aheadMin > 59) return Number.NaN;
  const behind = (ahead * 60 + aheadMin) * (sign === "-" ? 1 : -1);
  const part = Number(fraction.padEnd(3, "0").slice(0, 3));
  return startOfDay(date) + (hour * 60 + min + behind) * minute + second * 1000 + part;
}

/** The start of a day such as 2031-04-30 by universal time, in milliseconds since 1970; not a number for what is no day. */
export function startOfDay(text: string): number {
  const found = day.exec(text);
  if (!found) return Number.NaN;
  const [year, month, date] = [Number(found[1]), Number(found[2]), Number(found[3])];
  // The calendar repeats every 400 years; this way the years before 100 are none of the last century.
  const near = new Date(Date.UTC(2000 + (year % 400), month - 1, date));
  if (near.getUTCMonth() !== month - 1 || near.getUTCDate() !== date) return Number.NaN;
  return near.getTime() + (Math.floor(year / 400) - 5) * cycle;
}
