import { readdirSync, readFileSync } from "node:fs";
import { sources } from "@ringwright/core/sources";
import { units } from "@ringwright/core/units";
import { allIds } from "@ringwright/words";
import { expect, test } from "vitest";

type Tree = null | boolean | number | string | readonly Tree[] | { readonly [name: string]: Tree };
type Members = { readonly [name: string]: Tree };

const folder = new URL("./materials/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const read = (name: string) => JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Members;

/** Every group of members in a tree, with its path. Origins are looked at with the fact they belong to. */
function* groups(tree: Tree, path: string): Generator<readonly [path: string, group: Members]> {
  if (Array.isArray(tree)) for (const [index, entry] of (tree as readonly Tree[]).entries()) yield* groups(entry, `${path}[${index}]`);
  else if (typeof tree === "object" && tree !== null) {
    const group = tree as Members;
    yield [path, group];
    for (const [name, member] of Object.entries(group)) if (name !== "origin") yield* groups(member, `${path}.${name}`);
  }
}
const all = files.flatMap((name) => [...groups(read(name), name)]);
const facts = all.filter(([, group]) => "origin" in group);
const sentences = allIds();

test("there are nine files of materials, and facts in each", () => {
  expect(files).toHaveLength(9);
  for (const name of files)
    expect(
      facts.some(([path]) => path.startsWith(name)),
      name,
    ).toBe(true);
});

test("whatever has a figure or says something has an origin", () => {
  const tells = (member: Tree | undefined) =>
    member !== undefined && (typeof member !== "object" || member === null || Array.isArray(member));
  const members = ["value", "min", "max", "rating", "says", "names", "class"];
  const bare = all.filter(([, group]) => members.some((name) => tells(group[name])) && !("origin" in group));
  // Inside a fact that has one: how far above the box the flush is set.
  expect(bare.map(([path]) => path).filter((path) => !path.endsWith(".flushAbove"))).toEqual([]);
});

test("each origin is in the registry of sources, and a fact without one says that it is missing", () => {
  const known: ReadonlySet<string> = new Set(Object.keys(sources));
  for (const [path, group] of facts) {
    const origin = group.origin as readonly Members[];
    if (origin.length === 0) expect(group.missing, path).toBeTypeOf("string");
    for (const { source } of origin) expect(known, `${path}: ${String(source)}`).toContain(source);
    expect(group.seen, path).toBeTypeOf("boolean");
    if (!("rating" in group)) expect(["A", "B", "C", "D"], path).toContain(group.confidence);
  }
});

test("what is marked as seen rests on something that was read", () => {
  for (const [path, group] of facts) {
    const bearing = (group.origin as readonly Members[]).filter(({ supports }) => supports !== false);
    const opened = bearing.some(({ source, seen }) => {
      const how = (seen as string | undefined) ?? sources[source as keyof typeof sources].seen;
      return how === "read" || how === "quoted";
    });
    if (group.seen === true) expect(opened, path).toBe(true);
  }
});

test("nothing that is not known is given as a number", () => {
  for (const [path, group] of facts) {
    const unknown = ["value", "min", "max", "class", "policy", "food", "potable", "oxygen"].some((name) => group[name] === null);
    if (unknown && group.notLimiting !== true) expect(group.missing, path).toBeTypeOf("string");
  }
});

test("every figure lies within its spread, and its warning line does not lie above it", () => {
  for (const [path, group] of facts) {
    const { value, spread, warnAt, min, max } = group as {
      value?: number;
      spread?: readonly number[];
      warnAt?: number;
      min?: number;
      max?: number;
    };
    const figure = value ?? (group.class as number | undefined);
    if (spread && typeof figure === "number") {
      expect(figure, path).toBeGreaterThanOrEqual(spread[0] ?? Number.NaN);
      expect(figure, path).toBeLessThanOrEqual(spread[1] ?? Number.NaN);
    }
    if (warnAt !== undefined) expect(warnAt, path).toBeLessThan(value ?? Number.NaN);
    if (typeof min === "number" && typeof max === "number") expect(min, path).toBeLessThanOrEqual(max);
  }
});

test("a limit stands above the lowest figure met only where its warning line carries that figure", () => {
  const limits = facts.filter(([path]) => /styles\[\d+\]\.(?:temperature\.in|speed|pressure\.)/u.test(path));
  expect(limits.length).toBe(25 * 8);
  for (const [path, group] of limits) {
    const { value, spread, warnAt } = group as { value: number | null; spread?: readonly number[]; warnAt?: number };
    if (value !== null && spread && value > (spread[0] ?? 0)) expect(warnAt, path).toBe(spread[0]);
  }
});

test("every unit is one of the program's, or a scale that it carries as it is", () => {
  const scales = new Set(["1", "HB", "HRC", "HV", "1/K", "W/(m*K)", "bar*m/s"]);
  for (const [path, { unit }] of all)
    if (typeof unit === "string") expect(units.has(unit) || scales.has(unit), `${path}: ${unit}`).toBe(true);
});

test("every remark has its sentence", () => {
  const missing = facts.flatMap(([path, group]) =>
    [...((group.says as readonly string[] | undefined) ?? []), group.note, group.missing]
      .filter((id): id is string => typeof id === "string" && !sentences.has(id))
      .map((id) => `${path}: ${id}`),
  );
  expect(missing).toEqual([]);
});

test("all twenty-five styles, seven lubricants, four rubbers, fifty-four fluids by fifteen chemistries are there, fifty-eight cells with a source", () => {
  const { fluids, chemistries } = read("fluids.json") as {
    fluids: readonly { id: string; cells: Record<string, { seen: boolean; rating: string }> }[];
    chemistries: readonly string[];
  };
  expect((read("styles.json").styles as readonly Members[]).length).toBe(25);
  expect((read("lubricants.json").lubricants as readonly Members[]).length).toBe(7);
  expect((read("elastomers.json").elastomers as readonly Members[]).length).toBe(4);
  expect(fluids).toHaveLength(54);
  expect(chemistries).toHaveLength(15);
  for (const { id, cells } of fluids) expect(Object.keys(cells), id).toEqual(chemistries);
  const cells = fluids.flatMap((fluid) => Object.values(fluid.cells));
  expect(cells).toHaveLength(810);
  expect(cells.filter(({ seen }) => seen)).toHaveLength(58);
  expect(new Set(cells.map(({ rating }) => rating))).toEqual(new Set(["S", "C", "N"]));
});

test("what the files name in one another exists", () => {
  const ids = (name: string, list: string) => new Set((read(name)[list] as readonly { id: string }[]).map(({ id }) => id));
  const styles = ids("styles.json", "styles");
  const fluids = ids("fluids.json", "fluids");
  const lubricants = ids("lubricants.json", "lubricants");
  const chemistries = new Set(read("fluids.json").chemistries as readonly string[]);
  const sleeves = ids("sleeves.json", "sleeves");
  const named = (name: string) =>
    facts.flatMap(([path, group]) => ((group[name] as readonly string[] | undefined) ?? []).map((id) => [path, id] as const));
  for (const [path, id] of named("fluids")) expect(fluids, path).toContain(id);
  for (const [path, id] of named("lubricants")) expect(lubricants, path).toContain(id);
  for (const [path, id] of named("sleeves")) expect(sleeves, path).toContain(id);
  for (const [path, group] of facts) {
    for (const part of (group.parts as readonly (readonly string[])[] | undefined) ?? [])
      for (const id of part) expect(chemistries, path).toContain(id);
    if (path.startsWith("end-rings"))
      for (const id of (group.for as readonly string[] | undefined) ?? []) expect(styles, path).toContain(id);
  }
});
