import { motions } from "@ringwright/core/box";
import { boxDesigns } from "@ringwright/core/flush";
import { readAllFacts } from "@ringwright/data";
import { englishSpellings } from "@ringwright/words";
import { expect, test } from "vitest";
import type { Json } from "./field.ts";
import { answers } from "./register.ts";
import { ask } from "./reply.ts";
import { chosen, idFor, spelt } from "./spellings.ts";

const facts = readAllFacts();

/** Every list of choices in the schemas. */
function lists(schema: Json): readonly (readonly string[])[] {
  if (typeof schema !== "object" || schema === null) return [];
  const own = !Array.isArray(schema) && "enum" in schema ? [schema.enum as readonly string[]] : [];
  return [...own, ...Object.values(schema).flatMap((entry) => lists(entry as Json))];
}

test("every choice is taken in capitals, with spaces and with underscores", () => {
  const all = answers.flatMap((entry) => lists(entry.question.schema));
  expect(all.length).toBeGreaterThan(50);
  for (const choices of all) {
    expect(new Set(choices.map(spelt)).size, choices.join()).toBe(choices.length);
    for (const choice of choices) expect(chosen(choice.toUpperCase().replaceAll("-", " _"), choices)).toBe(choice);
  }
});

test("what people call a thing is taken for its id, and what may be two things is not", () => {
  expect(chosen("pump", motions)).toBe("turning");
  expect(chosen("Rising stem", motions)).toBe("rising-stem");
  expect(chosen("valve", motions)).toBeUndefined();
  expect(chosen("", motions)).toBeUndefined();
  expect(chosen("constructor", motions)).toBeUndefined();
  expect(chosen("balance holes", boxDesigns)).toBe("balance-holes-back-rings");
  expect(chosen("don't know", boxDesigns)).toBe("unknown");
  expect(chosen(true, ["yes", "no", "unknown"])).toBe("yes");
  expect(idFor("sleeve", "13Cr_hardened")).toBe("chromium-13-hardened");
  expect(idFor("sleeve", "constructor")).toBe("constructor");
});

test("every spelling is in the form it is compared in, and stands for an id that there is", () => {
  const ids: Readonly<Record<string, ReadonlySet<string>>> = {
    sleeve: new Set(facts.materials.sleeves.map((sleeve) => sleeve.id)),
    fluid: new Set(facts.materials.fluids.map((fluid) => fluid.id)),
  };
  for (const [list, spellings] of Object.entries(englishSpellings)) {
    for (const [spelling, id] of Object.entries(spellings)) {
      expect(spelt(spelling)).toBe(spelling);
      if (ids[list]) expect(ids[list].has(id), id).toBe(true);
    }
  }
});

test("a service told in plain words is the service told in ids", () => {
  const ids = {
    motion: "turning",
    fluids: ["cold-industrial-water"],
    temperature: "40 degC",
    pressure: "5 bar",
    speed: "8 m/s",
    pH: 7,
    solids: "none",
    sleeve: "austenitic-stainless",
    phase: "liquid",
    condition: "poor",
    release: "not-allowed",
    use: "none",
  };
  const words = {
    ...ids,
    motion: "Pump",
    fluids: ["water"],
    solids: false,
    sleeve: 316,
    condition: "scored",
    release: "not allowed",
    use: "None",
  };
  const [one, other] = [ask("materials", ids, facts), ask("materials", words, facts)];
  expect(one.ok && other.ok && other.answer).toEqual(one.ok && one.answer);
});

test("not known, said in words, is not known", () => {
  const { answer: left } = ask("materials", { motion: "turning" }, facts) as { answer: Json };
  const { answer: said } = ask("materials", { motion: "turning", sleeve: "unknown", condition: "don't know", pH: "don't know" }, facts) as {
    answer: Json;
  };
  expect(said).toEqual(left);
});

test("the class of a stud may come as the number that it looks like", () => {
  const bolt = (propertyClass: Json) => ask("bolt", { thread: "M12", propertyClass }, facts);
  expect(bolt(8.8)).toEqual(bolt("8.8"));
  expect(bolt(8.8)).toMatchObject({ ok: true, answer: { proofLoad: { value: 48900 } } });
});
