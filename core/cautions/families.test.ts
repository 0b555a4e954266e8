import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { cautions } from "./index.ts";

const { cautions: facts, materials } = readAllFacts();
const styleIds = materials.styles.map((style) => style.id);

test("every style of packing belongs to one family, and every family has styles", () => {
  const listed = facts.families.flatMap((family) => family.styles);
  expect([...listed].sort()).toEqual([...styleIds].sort());
  expect(facts.families.filter((family) => family.styles.length === 0)).toEqual([]);
});

test("a family is brought home as its styles are: light, firm, to full load, or not known", () => {
  const as = {
    "ptfe-light": "light",
    "graphite-yarn-light": "light",
    "graphite-braid": "firm",
    "other-fibre-firm": "firm",
    "stem-full-load": "full-load",
  } as const;
  for (const { id, seating } of materials.styles) {
    const family = facts.families.find((entry) => entry.styles.includes(id));
    expect(family?.seating, id).toBe(seating.policy === null ? "unknown" : as[seating.policy]);
  }
});

test("every fluid of the chemical matrix says what it can do to a person", () => {
  expect(facts.fluids.map((fluid) => fluid.id).sort()).toEqual([...materials.fluids.map((fluid) => fluid.id)].sort());
});

test("every shaft material that pits under wet graphite is one of the list", () => {
  const sleeves = materials.sleeves.map((sleeve) => sleeve.id);
  expect(facts.pittingSleeves.filter((id) => !sleeves.includes(id))).toEqual([]);
});

test("a style speaks for itself, whatever family is named beside it", () => {
  const seating = (given: { style?: string; family?: string }) => {
    const found = cautions({ motion: "turning", ...given }, facts);
    return found.ok ? [found.value.taken.find((entry) => entry.side === "seating")?.value, found.warnings.length] : [];
  };
  expect(seating({ style: "ptfe-dry", family: "graphite" })).toEqual(["light", 0]);
  expect(seating({ family: "aramid" })).toEqual(["firm", 0]);
  expect(seating({ style: "string" })).toEqual(["unknown", 1]);
});
