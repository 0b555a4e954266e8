import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { material } from "../../core/materials/index.ts";
import { english } from "./index.ts";
import { materialsNames, materialsSentences } from "./materials.ts";

test("no other topic says something else under an id of the materials", () => {
  for (const [id, sentence] of Object.entries(materialsSentences)) expect(english.sentences[id], id).toBe(sentence);
  for (const [id, name] of Object.entries(materialsNames)) expect(english.names[id], id).toBe(name);
});

test("every style, chemistry, fluid and property that is shown by its id reads as words", () => {
  const facts = readAllFacts().materials;
  const told = material({ id: "eg-braid" }, facts);
  const properties = told.ok ? told.value.lines.map(({ property }) => `material-${property}`) : [];
  expect(properties).toHaveLength(36);
  const shown = [
    ...properties,
    ...facts.styles.map(({ id }) => id),
    ...facts.chemistries,
    ...facts.fluids.map(({ id }) => id),
    ...facts.rubbers.map(({ id }) => id),
  ];
  const bare = shown.filter((id) => id.includes("-") && english.names[id] === undefined);
  expect(bare).toEqual([]);
});
