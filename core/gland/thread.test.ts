import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { found, refusalOf } from "../../testing/found.ts";
import { property } from "../../testing/property.ts";
import { inUnit } from "../units/index.ts";
import { findThread } from "./index.ts";

const { threads } = readAllFacts().gland;
const nameOf = (text: string) => found(findThread(text, threads)).name;

test("a fitter may write a thread in any of the usual ways", () => {
  for (const [written, meant] of [
    ["M12", "M12"],
    ["m12", "M12"],
    ["M 12", "M12"],
    ["M12x1.75", "M12"],
    ["M12 x 1,75", "M12"],
    ["M12×1.25", "M12x1.25"],
    ["m 12 - 1.25", "M12x1.25"],
    ["M8*1", "M8x1"],
    ["1/2-13", "1/2-13 UNC"],
    ["1/2 - 13 unc", "1/2-13 UNC"],
    ['1/2"-13', "1/2-13 UNC"],
    ["½-13", "1/2-13 UNC"],
    ["1/2 UNC", "1/2-13 UNC"],
    ["1/2 in UNF", "1/2-20 UNF"],
    ["0.5-20", "1/2-20 UNF"],
    ["5/8-11 UNC", "5/8-11 UNC"],
    ["5/8-11 UNC-2A", "5/8-11 UNC"],
    ["1-8", "1-8 UNC"],
    ["1-8 UN", "1-8 UNC"],
    ["1 1/8-7", "1 1/8-7 UNC"],
    ["1-1/8-8", "1 1/8-8 8UN"],
    ["1 1/8 8UN", "1 1/8-8 8UN"],
    ["1⅛-12 UNF", "1 1/8-12 UNF"],
  ] as const) {
    expect(nameOf(written), written).toBe(meant);
  }
});

test("an inch size alone is asked about, naming the threads it may be", () => {
  expect(refusalOf(findThread("1/2", threads))).toMatchObject({
    kind: "not-known",
    input: "thread",
    given: "1/2",
    allowed: ["1/2-13 UNC", "1/2-20 UNF"],
    says: { id: "thread-needs-pitch" },
  });
});

test("what is no thread, or none of these, is refused and nothing of it is guessed", () => {
  for (const written of [
    "",
    "12",
    "M",
    "M13",
    "M12x50",
    "M12-8.8",
    "1/2-14",
    "1/0-13",
    "G 1/2",
    "1/2 BSW",
    "M-12",
    "M12x",
    "x".repeat(5000),
    "NaN",
  ]) {
    expect(refusalOf(findThread(written, threads)), written).toMatchObject({ kind: "not-known", input: "thread", given: written });
  }
});

test("no two threads answer to the same name", () => {
  expect(new Set(threads.names).size).toBe(threads.names.length);
  for (const name of threads.names) expect(nameOf(name)).toBe(name);
});

property(
  "spaces, case and the sign between size and pitch never change which thread is meant",
  [fc.constantFrom(...threads.names), fc.constantFrom("", " ", "\u00a0"), fc.boolean(), fc.constantFrom("x", "×", "*", " x ", "-")],
  (name, space, upper, times) => {
    const written = name.startsWith("M") ? name.replace("x", times).replace("M", `M${space}`) : name.replace("-", `${space}-${space}`);
    expect(nameOf(upper ? written.toUpperCase() : written.toLowerCase())).toBe(name);
  },
);

property(
  "whatever is typed as a thread comes back as a thread or as a refusal that shows it",
  [fc.oneof(fc.string({ maxLength: 40 }), fc.stringMatching(/^[mM]? ?\d{0,3}[/x. -]{0,2}\d{0,3}[ -]?(UNC|UNF|8UN)?$/))],
  (typed) => {
    const answer = findThread(typed, threads);
    if (answer.ok) expect(answer.value.pitch).toBeGreaterThan(0);
    else expect(answer.refusal.given).toBe(typed);
  },
  "fuzz",
);

against(
  {
    topic: "gland",
    check: "Pitch of coarse threads",
    source: { source: "iso-261", at: "coarse pitches" },
    tolerance: "exact",
  },
  (
    [
      ["M8", 1.25],
      ["M10", 1.5],
      ["M12", 1.75],
      ["M16", 2],
      ["M20", 2.5],
      ["M24", 3],
      ["M30", 3.5],
    ] as const
  ).map(([thread, pitch]) => ({
    what: thread,
    theirs: pitch,
    ours: () => inUnit("length", found(findThread(thread, threads)).pitch, "mm"),
    unit: "mm",
    within: { absolute: 1e-12 },
  })),
);
