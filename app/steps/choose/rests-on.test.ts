import { plan, type Survey } from "@ringwright/core/plan";
import { readAllFacts } from "@ringwright/data";
import type { BoxState, FieldValue } from "@ringwright/logbook";
import { expect, test } from "vitest";
import { wordsIn } from "../../parts/words.ts";
import { restsOn } from "./rests-on.ts";

const words = wordsIn("metric");
const facts = readAllFacts();

function told(survey: Survey, fields: Readonly<Record<string, FieldValue>>) {
  const said = Object.entries(fields).map(
    ([field, value]) => [field, { standing: [{ value, entry: "e", by: "owner", at: "" }], said: 1 }] as const,
  );
  const found = plan(survey, facts);
  return restsOn({ fields: new Map(said) } as unknown as BoxState, found.ok ? found.value : undefined, words);
}

test("what was said is told as it was typed, what was not said with what was left uncompared", () => {
  const all = told({ motion: "turning", service: { pH: 7.5 } }, { "service.pH": 7.5, "service.fluids": null });
  expect(all.find(({ field }) => field === "service.pH")).toMatchObject({ value: "7.5" });
  expect(all.find(({ field }) => field === "service.fluids")).toMatchObject({
    value: "don't know",
    without: words("material-without-fluids"),
  });
  expect(all.find(({ field }) => field === "service.temperature")).toMatchObject({ without: words("material-without-temperature") });
  expect(all.map(({ field }) => field)).toContain("release");
  expect(all.map(({ field }) => field)).toContain("service.rotation");
});

test("a stem is asked neither for speed nor whether its film may be let out", () => {
  const fields = told({ motion: "rising-stem" }, {}).map(({ field }) => field);
  expect(fields).not.toContain("service.rotation");
  expect(fields).not.toContain("release");
});

test("a sleeve whose hardness follows from its material is not asked for it", () => {
  const hard = told({ motion: "turning", service: { sleeve: "chromium-oxide" } }, { "service.sleeve": "chromium-oxide" });
  expect(hard.map(({ field }) => field)).not.toContain("condition.hardness");
  const unsaid = told({ motion: "turning" }, {});
  expect(unsaid.find(({ field }) => field === "condition.hardness")?.without).toBe(words("material-without-sleeve"));
});
