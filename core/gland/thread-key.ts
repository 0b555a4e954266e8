import { keptByName } from "../workings/index.ts";

const metric = /^m ?(\d+(?:\.\d+)?)(?: ?[x-] ?(\d+(?:\.\d+)?))?$/u;
const unified =
  /^(?:(?:(?<whole>\d+)[ -])?(?<num>\d+)\/(?<den>\d+)|(?<size>\d+(?:\.\d+)?))(?:(?: ?[-x] ?| )(?<threads>\d+))?(?: ?-? ?(?<series>unc|unf|8un|un))?(?: ?-? ?[123][ab])?$/u;

const fractions: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

function tidy(text: string): string {
  return text
    .slice(0, 60)
    .toLowerCase()
    .replace(/[¼½¾⅛⅜⅝⅞]/gu, (mark) => ` ${fractions[mark]}`)
    .replace(/[×*]/gu, "x")
    .replace(/[⁄∕]/gu, "/")
    .replace(/[–−]/gu, "-")
    .replace(/,/gu, ".")
    .replace(/["”″]|\b(?:inch|in)\b\.?/gu, " ")
    .replace(/\s+/gu, " ")
    .replace(/ ?- ?/gu, "-")
    .trim();
}

/**
 * What people write for a thread, as one spelling to look up: `m12`,
 * `m12x1.25`, `0.5-13unc`. Undefined when it is no thread designation.
 */
export function threadKey(text: string): string | undefined {
  return keys(text, text);
}

/** The same few threads are asked for again and again. */
const keys = keptByName(keyOf);

function keyOf(text: string): string | undefined {
  const tidied = tidy(text);
  const iso = metric.exec(tidied);
  if (iso) return iso[2] === undefined ? `m${Number(iso[1])}` : `m${Number(iso[1])}x${Number(iso[2])}`;
  const groups = unified.exec(tidied)?.groups;
  if (!groups) return undefined;
  const size = groups.den === undefined ? Number(groups.size) : Number(groups.whole ?? 0) + Number(groups.num) / Number(groups.den);
  return inchKey(size, groups.threads, groups.series);
}

/** The spelling of an inch thread: size in decimals, threads per inch, series; each left out when not said. */
export function inchKey(size: number, threads?: string | number, series = ""): string {
  return `${size}${threads === undefined ? "" : `-${threads}`}${series}`;
}
