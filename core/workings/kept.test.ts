import { expect, test } from "vitest";
import { keptByName, keptFor } from "./kept.ts";

test("what is made for a file of facts is made once, and apart for another file", () => {
  let times = 0;
  const sizes = keptFor((facts: { readonly size: number }) => {
    times++;
    return { doubled: 2 * facts.size };
  });
  const [one, other] = [{ size: 1 }, { size: 1 }];
  expect(sizes(one)).toBe(sizes(one));
  expect(sizes(other)).not.toBe(sizes(one));
  expect(times).toBe(2);
});

test("what comes to nothing is kept too", () => {
  let times = 0;
  const nothing = keptFor((_: object): undefined => void times++);
  const nameless = keptByName((_: string): undefined => void times++);
  const facts = {};
  for (let i = 0; i < 3; i++) {
    expect(nothing(facts)).toBeUndefined();
    expect(nameless("m12", "m12")).toBeUndefined();
  }
  expect(times).toBe(2);
});

test("things kept by name never grow without end, and come out the same after they were dropped", () => {
  let times = 0;
  const lengths = keptByName((text: string) => {
    times++;
    return { length: text.length };
  }, 3);
  for (const text of ["a", "bb", "ccc", "a", "bb", "ccc"]) expect(lengths(text, text).length).toBe(text.length);
  expect(times).toBe(3);
  expect(lengths("dddd", "dddd").length).toBe(4);
  expect(lengths("a", "a").length).toBe(1);
  expect(times).toBe(5);
});
