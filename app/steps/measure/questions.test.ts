import { type Json, surveyField } from "@ringwright/answers";
import { isStem, motions } from "@ringwright/core/box";
import { readAllFacts } from "@ringwright/data";
import { english } from "@ringwright/words";
import { describe, expect, test } from "vitest";
import { nextQuestion, questionOf } from "./progress.ts";
import { entryKind } from "./question.ts";
import { leftToOthers, questions, questionsFor } from "./questions.ts";

/** Every leaf of the survey, as its schema describes it; what takes readings or a quantity is one. */
function leaves(schema: Json | undefined, path = ""): readonly string[] {
  if (typeof schema !== "object" || schema === null || Array.isArray(schema)) return [path];
  const { properties, anyOf } = schema as { readonly properties?: Readonly<Record<string, Json>>; readonly anyOf?: readonly Json[] };
  const inner = properties ?? groupIn(anyOf);
  if (inner === undefined || "readings" in inner || "unit" in inner) return [path];
  return Object.entries(inner).flatMap(([name, one]) => leaves(one, path === "" ? name : `${path}.${name}`));
}

function groupIn(anyOf: readonly Json[] | undefined): Readonly<Record<string, Json>> | undefined {
  for (const one of anyOf ?? []) {
    if (typeof one === "object" && one !== null && "properties" in one) return one.properties as Readonly<Record<string, Json>>;
  }
  return undefined;
}

const fields = leaves(surveyField.schema as Json);

describe("the list of questions", () => {
  test("asks every field of the survey, or says who else does", () => {
    expect(fields.length).toBeGreaterThan(70);
    const asked = new Set(questions.map(({ field }) => field));
    expect(fields.filter((field) => !asked.has(field) && leftToOthers[field] === undefined)).toEqual([]);
    expect([...asked, ...Object.keys(leftToOthers)].filter((field) => !fields.includes(field))).toEqual([]);
    expect(Object.keys(leftToOthers).filter((field) => asked.has(field))).toEqual([]);
  });

  test("asks each field of a box once, and each id stands once", () => {
    for (const motion of motions) {
      const asked = questionsFor({ motion, lantern: { wanted: true }, flush: { fitted: true } }).map(({ field }) => field);
      expect(asked.filter((field, index) => asked.indexOf(field) !== index)).toEqual([]);
    }
    expect(new Set(questions.map(({ id }) => id)).size).toBe(questions.length);
  });

  test("has its words: what is asked, why, and how; and a word for every option", () => {
    const said = (id: string) => Object.hasOwn(english.sentences, id);
    const lacking = questions.flatMap(({ id, asks }) => [
      ...["ask", "why", "how"].map((part) => `${part}-${id}`).filter((one) => !said(one)),
      ...("options" in asks ? asks.options.filter((one) => !said(`choice-${id}-${one}`) && !said(`choice-${one}`)) : []),
    ]);
    expect(lacking).toEqual([]);
  });

  test("has a name for every fluid and every surface that can be chosen, where the id is not itself the word", () => {
    const { fluids, sleeves } = readAllFacts().materials;
    const ids = [...fluids, ...sleeves].map((one) => (typeof one === "string" ? one : one.id));
    expect(ids.length).toBeGreaterThan(60);
    expect(ids.filter((id) => !Object.hasOwn(english.names, id) && !/^[a-z]+(?:-[a-z]+)?$/u.test(id))).toEqual([]);
  });

  test("every option is one that the survey takes", () => {
    for (const { field, asks } of questions) {
      if (asks.is !== "choice") continue;
      for (const option of asks.options) {
        const asked = field.split(".").reduceRight<Json>((inner, name) => ({ [name]: inner }), option) as { readonly [name: string]: Json };
        const read = surveyField.read({ motion: "turning", ...asked }, "", { typed: new Map() });
        expect(read.ok, `${field}: ${option}`).toBe(true);
      }
    }
  });
});

describe("each shaft has its own list", () => {
  const pumpOnly = ["service.suction", "service.discharge", "service.impeller", "service.rotation", "condition.runout", "flush.fitted"];

  test("a stem is never asked what is asked of a pump", () => {
    for (const motion of motions.filter(isStem)) {
      const asked = questionsFor({ motion, lantern: { wanted: true }, flush: { fitted: true } }).map(({ field }) => field);
      expect(asked.filter((field) => pumpOnly.includes(field) || field.startsWith("flush."))).toEqual([]);
    }
  });

  test("only a plunger is asked for its stroke, and only what turns for its speed", () => {
    const asking = (field: string) => motions.filter((motion) => questionOf({ motion }, field) !== undefined);
    expect(asking("service.stroke")).toEqual(["stroking"]);
    expect(asking("service.rotation")).toEqual(["turning", "slow-agitator"]);
  });

  test("until the motion is known, nothing else is asked", () => {
    expect(questionsFor({}).map(({ field }) => field)).toEqual(["motion"]);
  });
});

describe("the order of the work", () => {
  const nothing = { fields: new Map() } as unknown as Parameters<typeof nextQuestion>[1];

  test("shaft, then bore, then depth", () => {
    const next = (after: string) => nextQuestion({ motion: "turning" }, nothing, after)?.field;
    expect([next("zone"), next("shaft"), next("bore")]).toEqual(["shaft", "bore", "depth"]);
  });

  test("what cannot be measured is asked another way", () => {
    const of = (window: Json, fromFace: Json) => ({ motion: "turning", lantern: { wanted: true, window }, port: { fromFace } });
    expect(questionOf(of(0.012, 0.06), "lantern.land")).toBeUndefined();
    expect(questionOf(of(null, 0.06), "lantern.land")).toBeDefined();
    expect(questionOf(of(0.012, null), "port.fromThroat")).toBeDefined();
  });

  test("without a lantern ring nothing is asked about it", () => {
    expect(questionOf({ motion: "turning", lantern: { wanted: false } }, "lantern.width")).toBeUndefined();
  });
});

test("what the box is, what was settled and what was read at it are entries of their own kinds", () => {
  expect(["zone", "service.pressure", "set.throatBush", "shaft", "port.diameter"].map(entryKind)).toEqual([
    "box-described",
    "box-described",
    "rings-chosen",
    "measured",
    "measured",
  ]);
});
