import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { quantity } from "../units/index.ts";
import { familyOf, fluidsList, material, styleFacts } from "./index.ts";

const facts = readAllFacts().materials;
const of = (id: string) => {
  const answer = styleFacts(id, facts);
  if (!answer.ok) throw new Error(id);
  return answer;
};

// ASME/NRC symposium paper PVS2017-3518: radial over axial stress is commonly taken as 0.50.
test("the stress ratio of graphite is the 0.5 commonly taken, with its spread in the workings", () => {
  const answer = of("eg-braid");
  expect(answer.value.ratio).toEqual({ typical: 0.5, band: { low: 0.5, high: 0.9 } });
  const step = answer.workings.find(([rule]) => rule.id === "eg-braid-stress-ratio");
  expect(step?.[2]).toBe(0.5);
  expect(step?.[0].assumed).toEqual({ min: 0.5, max: 0.9 });
  expect(step?.[0].citation.source).toBe("drago-evans-2017");
});

// Valve selection handbook: solid PTFE 0.85 when cold, 0.56 at 100 °C.
test("PTFE presses sideways between the two ratios that the valve handbook gives", () => {
  expect(of("ptfe-dry").value.ratio).toEqual({ typical: 0.56, band: { low: 0.5, high: 0.85 } });
});

test("plant fibre is cut with room to swell, graphite and PTFE without a gap", () => {
  expect(of("cotton").value.gap).toEqual({ low: quantity("length", 1.5, "mm"), high: quantity("length", 3, "mm") });
  expect(of("eg-braid").value.gap).toEqual({ low: 0, high: 0 });
  expect(of("ptfe-lub").value.gap).toEqual({ low: 0, high: 0 });
});

test("PTFE and graphite yarn are seated lightly, graphite braid and other fibres firmly, stem sets to full load", () => {
  const seating = (id: string) => of(id).value.seating;
  expect(["ptfe-dry", "ptfe-lub", "eptfe-graphite", "carbon-ptfe"].map(seating)).toEqual(Array(4).fill("ptfe-light"));
  expect(seating("graphite-yarn")).toBe("graphite-yarn-light");
  expect(["eg-braid", "eg-braid-carbon"].map(seating)).toEqual(Array(2).fill("graphite-braid"));
  expect(["aramid-spun", "ramie-flax-ptfe", "acrylic-ptfe"].map(seating)).toEqual(Array(3).fill("other-fibre-firm"));
  expect(["eg-die", "eg-braid-wire"].map(seating)).toEqual(Array(2).fill("stem-full-load"));
});

// Fire-pump overhaul manual: braided flexible graphite may come down to no drip.
test("only graphite may be lived with at no drip on a turning shaft", () => {
  expect(of("eg-braid").value.zeroDripAllowed).toBe(true);
  expect(of("ptfe-lub").value.zeroDripAllowed).toBe(false);
});

test("what is not known is left out, never nought", () => {
  const value = of("elastomer-core").value;
  for (const name of [
    "friction",
    "seatingLoss",
    "density",
    "gap",
    "seating",
    "expansion",
    "zeroDripAllowed",
    "stemGlandStress",
    "extrusion",
  ]) {
    expect(value, name).not.toHaveProperty(name);
  }
  expect(of("melamine").value).not.toHaveProperty("stemGlandStress");
});

test("every style has a family, and an id may be written with underscores", () => {
  for (const { id, family } of facts.styles) expect(familyOf(id, facts)).toBe(family);
  expect(familyOf("EG_braid", facts)).toBe("graphite");
  expect(familyOf("rope", facts)).toBeUndefined();
});

test("a style that is not there is refused with those that are", () => {
  expect(styleFacts("rope", facts)).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "material", given: "rope" } });
  expect(material({ id: "rope" }, facts)).toMatchObject({ ok: false, refusal: { kind: "not-known", input: "id" } });
});

test("one style is told with every line of it, and the fluids can be found by part of their id", () => {
  const told = material({ id: "ramie_flax_ptfe" }, facts);
  expect(told.ok && told.value.lines.length).toBe(36);
  const found = fluidsList({ find: "Sulfuric" }, facts);
  expect(found.ok && found.value.fluids.map(({ id }) => id)).toEqual(["sulfuric-concentrated-above-70", "oleum-fuming-sulfuric"]);
  const all = fluidsList({}, facts);
  expect(all.ok && all.value.fluids.length).toBe(54);
});
