import fc from "fast-check";
import { expect, test } from "vitest";
import { property } from "../testing/property.ts";
import { startOfDay, timeOf } from "./time.ts";

property(
  "times are read as the engine reads them",
  [
    fc.date({ min: new Date("0001-01-02T00:00:00Z"), max: new Date("9999-12-30T00:00:00Z"), noInvalidDate: true }),
    fc.integer({ min: -1439, max: 1439 }),
  ],
  (date, offset) => {
    const iso = date.toISOString();
    expect(timeOf(iso)).toBe(Date.parse(iso));
    const [hours, minutes] = [Math.floor(Math.abs(offset) / 60), Math.abs(offset) % 60].map((part) => String(part).padStart(2, "0"));
    const ahead = `${iso.slice(0, 23)}${offset < 0 ? "-" : "+"}${hours}:${minutes}`;
    expect(timeOf(ahead)).toBe(Date.parse(ahead));
    expect(startOfDay(iso.slice(0, 10))).toBe(Date.parse(iso.slice(0, 10)));
  },
);

test.each([
  ["1985-04-12T23:20:50.52Z", Date.UTC(1985, 3, 12, 23, 20, 50, 520)],
  ["1996-12-19T16:39:57-08:00", Date.UTC(1996, 11, 20, 0, 39, 57)],
  ["1937-01-01T12:00:27.87+00:20", Date.UTC(1937, 0, 1, 11, 40, 27, 870)],
])("%s, an example of RFC 3339 5.8 (from memory), is read", (text, ms) => {
  expect(timeOf(text)).toBe(ms);
});

test.each([
  "2031-02-30T08:00:00Z",
  "2031-02-29T08:00:00Z",
  "2031-13-01T08:00:00Z",
  "2031-00-01T08:00:00Z",
  "2031-01-00T08:00:00Z",
  "2031-01-01T24:00:00Z",
  "2031-01-01T08:60:00Z",
  "2031-01-01T08:00:60Z",
  "2031-01-01T08:00:00+24:00",
  "2031-01-01T08:00:00+01:60",
  "2031-01-01T08:00:00",
  "2031-01-01 08:00:00Z",
  "2031-01-01",
  "",
])("%s is no time", (text) => {
  expect(timeOf(text)).toBeNaN();
});

test("a day that is not in the calendar is no day", () => {
  expect(startOfDay("2032-02-29")).toBe(Date.UTC(2032, 1, 29));
  for (const none of ["2031-02-29", "2100-02-29", "2031-04-31", "2031-4-1", "2031-04-01 ", "soon"]) expect(startOfDay(none)).toBeNaN();
});
