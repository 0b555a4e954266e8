import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { inUnit, quantity } from "../units/index.ts";
import { ringMaterials } from "./index.ts";

const facts = readAllFacts().materials;
const asked = (question: Parameters<typeof ringMaterials>[0]) => {
  const answer = ringMaterials(question, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
};
const standing = (question: Parameters<typeof ringMaterials>[0], id: string) =>
  asked(question).lanterns.find(({ fact }) => fact.id === id)?.standing;
const limitOf = (id: string) =>
  inUnit("temperature", asked({}).lanterns.find(({ fact }) => fact.id === id)?.limit ?? (Number.NaN as never), "degF");

against(
  {
    topic: "materials",
    check: "Lantern ring materials",
    source: { source: "fsa-lantern-rings", at: "PTFE up to 400 degF, PEEK from 400 to 500 degF" },
    tolerance: "we carry whole degrees Celsius",
  },
  [
    { what: "PTFE", theirs: 400, ours: () => limitOf("ptfe"), unit: "degF", within: { absolute: 0.9 } },
    { what: "PEEK", theirs: 500, ours: () => limitOf("peek"), unit: "degF", within: { absolute: 0.9 } },
  ],
);

test("a box at 220 °C wants PEEK where PTFE would do at 90 °C", () => {
  const at = (celsius: number) => ({ temperature: quantity("temperature", celsius, "degC") });
  expect([standing(at(90), "ptfe"), standing(at(190), "ptfe"), standing(at(220), "ptfe"), standing(at(220), "peek")]).toEqual([
    "fits",
    "look",
    "stop",
    "fits",
  ]);
});

test("bronze never meets ammonia, and how hot bronze may be is not known", () => {
  expect(standing({ fluids: ["ammonia_aqueous"] }, "bronze")).toBe("stop");
  expect(standing({ fluids: ["cold-industrial-water"] }, "bronze")).toBe("ask");
});

// US Navy training manual on valve repair: graphite yarn braid as end rings of formed graphite.
test("end rings of graphite yarn go with die-formed graphite, and a split bush with any packing", () => {
  const ends = asked({ style: "eg-die" }).ends.map(({ id }) => id);
  expect(ends).toEqual(expect.arrayContaining(["graphite-yarn-braid", "wire-graphite-braid", "split-bush"]));
  expect(ends).not.toContain("solid-ptfe-or-peek");
});

test("what is not there is refused by name", () => {
  expect(ringMaterials({ fluids: ["treacle"] }, facts)).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "fluids[0]" } });
  expect(ringMaterials({ style: "rope" }, facts)).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "style" } });
  for (const temperature of [0, Number.NaN, 1e9]) {
    expect(ringMaterials({ temperature: temperature as never }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input: "temperature" },
    });
  }
});
