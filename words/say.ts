import { formatQuantity, type Kind, type Kinds, siUnits, type UnitSystem } from "@ringwright/core/units";
import type { Says, Shown } from "@ringwright/core/workings";
import { english } from "#english";
import type { Catalogue } from "./catalogue.ts";

/** How values are shown in a sentence. */
export interface Show {
  readonly catalogue: Catalogue;
  readonly system: UnitSystem;
}

const workshop: Show = { catalogue: english, system: "metric" };

function isKind(kind: string): kind is Kind {
  return Object.hasOwn(siUnits, kind);
}

/** One value as a sentence shows it. */
export function showIn(show: Show, value: Shown): string {
  if (typeof value === "string") return value;
  if (typeof value === "number") return plain(value);
  if (!isKind(value.kind)) return plain(value.value);
  const decimals = value.decimals === undefined || show.system === "inch" ? {} : { decimals: value.decimals };
  return formatQuantity(value.kind, value.value as Kinds[Kind], { system: show.system, digits: 3, ...decimals });
}

function plain(value: number): string {
  return Number.isInteger(value) ? String(value) : String(Number(value.toPrecision(4)));
}

/** The sentence for an id, with its values filled in. An id without a sentence is a programming mistake and shows as itself. */
export function sayIn(show: Show, { id, with: values = {} }: Says): string {
  const { sentences, names } = show.catalogue;
  if (!Object.hasOwn(sentences, id)) return id;
  return (sentences[id] ?? id).replace(/\{(\w+)\}/gu, (_, name: string) => {
    const value = values[name];
    if (value === undefined) return "";
    if (typeof value !== "string") return showIn(show, value);
    if (typedIn.has(name)) return name === "allowed" ? value : shortened(value);
    if (name === "input") return inputName(value, show.catalogue);
    return Object.hasOwn(names, value) ? (names[value] ?? value) : value;
  });
}

/** Values that a person typed, shown as they are even where they are also the id of something. */
const typedIn: ReadonlySet<string> = new Set(["given", "typed", "allowed"]);
const longest = 200;

function shortened(typed: string): string {
  return typed.length <= longest ? typed : `${typed.slice(0, longest)}…`;
}

/** What a field is called: `parts[2].height` is the height of part 3. */
export function inputName(path: string, catalogue: Catalogue = english): string {
  if (!/^[\w-]+(?:\[\d+\])*(?:\.[\w-]+(?:\[\d+\])*)*$/u.test(path)) return path;
  return path
    .split(".")
    .map((part) => {
      const [name = "", ...numbers] = part.split(/[[\]]+/u).filter((text) => text !== "");
      const called = Object.hasOwn(catalogue.names, name) ? (catalogue.names[name] ?? name) : apart(name);
      return [called, ...numbers.map((number) => `no. ${Number(number) + 1}`)].join(" ");
    })
    .join(", ");
}

/** A name in words: `gapTravel` and `gap-travel` as gap travel; `pH` as it is. */
function apart(name: string): string {
  return name
    .replaceAll("-", " ")
    .replace(/([a-z])([A-Z])(?=[a-z])/gu, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`);
}

/** The sentence in English with metric workshop units. */
export function say(says: Says): string {
  return sayIn(workshop, says);
}

/** What a quantity, input or part is called. */
export function nameOf(id: string, catalogue: Catalogue = english): string {
  return Object.hasOwn(catalogue.names, id) ? (catalogue.names[id] ?? id) : id.replaceAll("-", " ");
}

/** Every sentence id of a catalogue, for the check that none is missing. */
export function allIds(catalogue: Catalogue = english): ReadonlySet<string> {
  return new Set(Object.keys(catalogue.sentences));
}
