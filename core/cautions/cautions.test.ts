import { readAllFacts } from "@ringwright/data";
import { allIds } from "@ringwright/words";
import { expect, test } from "vitest";
import { anyCase } from "../../testing/any-case.ts";
import { property } from "../../testing/property.ts";
import { english } from "../../words/en/index.ts";
import { motions, releases, turns, uses, zones } from "../box/index.ts";
import { stepGroups } from "../fit/index.ts";
import { quantity } from "../units/index.ts";
import { type Case, cautions, oldPackings, phases, ringForms, seatings, services, yesNoUnknown } from "./index.ts";

const { cautions: facts, fit, runIn } = readAllFacts();

const ids = (given: Case): readonly string[] => {
  const found = cautions(given, facts);
  if (!found.ok) throw new Error(JSON.stringify(found.refusal));
  return found.value.cautions.map((caution) => caution.id);
};

property("on a turning shaft the turning shaft comes first; local rules come last on every box", [anyCase], (given) => {
  const found = ids(given);
  if (turns(given.motion)) expect(found[0]).toBe("caution-turning-shaft");
  else expect(found).not.toContain("caution-turning-shaft");
  expect(found.at(-1)).toBe("caution-local-rules");
});

property("devices stay outside unless the zone is known to be ordinary and nothing in the box burns", [anyCase], (given) => {
  const stay = (given.zone ?? "unknown") !== "ordinary" || given.flammable === "yes";
  if (stay) expect(ids(given)).toContain("caution-devices-outside");
});

property("not knowing whether the product poisons is at least as careful as knowing that it does not", [anyCase], (given) => {
  const { toxic: _, ...rest } = given;
  const unknown = new Set(ids({ ...rest, fluids: [], toxic: "unknown" }));
  for (const id of ids({ ...rest, fluids: [], toxic: "no" })) expect(unknown).toContain(id);
});

test("old packing from before 1980, or of unknown age, is treated as asbestos; on record it is not (common practice, no source)", () => {
  for (const oldPacking of ["before-1980", "unknown"] as const)
    expect(ids({ motion: "turning", oldPacking })).toContain("caution-old-asbestos");
  expect(ids({ motion: "turning" })).toContain("caution-old-asbestos");
  for (const oldPacking of ["recorded", "none", "since-1980"] as const)
    expect(ids({ motion: "turning", oldPacking })).not.toContain("caution-old-asbestos");
});

test("smoke on a product that burns: the site's emergency rule stands before everything else about smoke", () => {
  const found = ids({ motion: "turning", flammable: "yes" });
  expect(found.indexOf("caution-smoke-flammable")).toBeGreaterThan(0);
  expect(found.indexOf("caution-smoke-flammable")).toBe(found.indexOf("caution-smoke-steam-squeal") - 1);
  expect(ids({ motion: "turning", flammable: "no" })).not.toContain("caution-smoke-flammable");
});

// ISO 13732-1 (thresholds from memory): 51 °C burns within a minute of touch on any material.
test("a box burns from 51 °C; whoever knows the temperature need not say hot", () => {
  const at = (value: number) =>
    ids({ motion: "turning", temperature: quantity("temperature", value, "degC") }).includes("caution-hot-product");
  expect([at(50.9), at(51), at(90)]).toEqual([false, true, true]);
});

test("graphite on 13 % chromium steel is warned of while wet, not on austenitic steel, not in gas", () => {
  const on = (sleeve: string, phase: "liquid" | "gas") => ids({ motion: "rising-stem", family: "graphite-for-stems", sleeve, phase });
  expect(on("chromium-13", "liquid")).toContain("caution-graphite-on-chromium-steel");
  expect(on("austenitic-stainless", "liquid")).not.toContain("caution-graphite-on-chromium-steel");
  expect(on("chromium-13", "gas")).not.toContain("caution-graphite-on-chromium-steel");
});

test("each of the usual cautions of the trade can be met", () => {
  const met = new Set([
    ...ids({
      motion: "turning",
      vertical: "yes",
      toxic: "yes",
      corrosive: "yes",
      flammable: "yes",
      heating: "yes",
      release: "not-allowed",
      use: "potable",
      service: "fire-pump",
    }),
    ...ids({
      motion: "turning",
      fluids: ["bitumen-asphalt-150-200", "cryogenic-inert-to-minus-196", "nitric-concentrated"],
      use: "food",
      oldPacking: "since-1980",
      family: "graphite-yarn",
    }),
    ...ids({ motion: "slow-agitator", phase: "gas", use: "oxygen" }),
    ...ids({ motion: "stroking" }),
    ...ids({ motion: "rising-stem" }),
  ]);
  expect(facts.cautions.map((caution) => caution.id).filter((id) => !met.has(id))).toEqual([]);
});

/** Fields of a survey and of the readings taken later, by the names they are asked under. */
const inputs = new Set(
  (
    "shaft bore depth stroke rotation pressure temperature fluids style sleeve use zone release flush quench grease heating vertical hot toxic " +
    "flammable corrosive oldPacking oldRings runout shaftLift endFloat clockGaps torque drip boxTemperature photo"
  ).split(" "),
);

test("every caution has its words, a source, and stands above something that exists", () => {
  const steps = new Set(
    [...Object.values(fit.groups), ...Object.values(runIn.groups)].flatMap((list) => (list ?? []).map((step) => step.id)),
  );
  for (const { id, guards, citations } of facts.cautions) {
    expect(allIds()).toContain(id);
    expect(citations.length, id).toBeGreaterThan(0);
    expect((guards.groups ?? []).filter((group) => !(stepGroups as readonly string[]).includes(group))).toEqual([]);
    expect(
      (guards.steps ?? []).filter((step) => !steps.has(step)),
      id,
    ).toEqual([]);
    expect(
      (guards.inputs ?? []).filter((input) => !inputs.has(input)),
      id,
    ).toEqual([]);
    expect((guards.inputs ?? []).length + (guards.groups ?? []).length + (guards.steps ?? []).length, id).toBeGreaterThan(0);
  }
});

test("conditions name only sides and values that a case can have", () => {
  const found = cautions({ motion: "turning" }, facts);
  const sides = new Set(found.ok ? found.value.taken.map((entry) => entry.side) : []);
  const values = new Set<string>([
    ...motions,
    ...releases,
    ...zones,
    ...phases,
    ...yesNoUnknown,
    ...oldPackings,
    ...uses,
    ...services,
    ...seatings,
    ...ringForms,
  ]);
  for (const caution of facts.cautions) {
    for (const when of caution.when ?? []) {
      expect(
        Object.keys(when).filter((side) => !sides.has(side)),
        caution.id,
      ).toEqual([]);
      expect(
        Object.values(when)
          .flat()
          .filter((value) => !values.has(value)),
        caution.id,
      ).toEqual([]);
    }
  }
});

test("nothing that a person can read says that something is without danger, or declares it shut off", () => {
  const claim = /\bsafe to\b|\b(?:is|are|now|it's) safe\b|\bisolated\b|\bno danger\b|\bharmless\b/iu;
  const texts = [...Object.values(english.sentences), ...Object.values(english.names)];
  expect(texts.filter((text) => claim.test(text))).toEqual([]);
});

test("what nobody said is named as unknown; a fluid that is not in the list is asked about", () => {
  const found = cautions({ motion: "turning", fluids: ["dragon-milk"] }, facts);
  expect(found).toMatchObject({ ok: true, warnings: [{ kind: "gap", input: "fluids", given: "dragon-milk" }] });
  expect(found.ok && found.value.unknown).toEqual(expect.arrayContaining(["release", "zone", "toxic", "oldPacking"]));
  expect(ids({ motion: "turning", fluids: ["dragon-milk"] })).toContain("caution-product-not-known");
});

test("a temperature or pressure that no box has is refused by name", () => {
  for (const [given, input] of [
    [{ temperature: -1 }, "temperature"],
    [{ temperature: Number.NaN }, "temperature"],
    [{ temperature: 1e308 }, "temperature"],
    [{ pressure: -200000 }, "pressure"],
    [{ pressure: Infinity }, "pressure"],
  ] as const) {
    expect(cautions({ motion: "turning", ...given } as Case, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input },
    });
  }
});
