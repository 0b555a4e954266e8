import { formatQuantity, type Kind, type Kinds, siUnits, type UnitSystem } from "@ringwright/core/units";
import type { Says, Shown } from "@ringwright/core/workings";
import type { Catalogue } from "./catalogue.ts";
import { english } from "./en/index.ts";

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
  const sentence = show.catalogue.sentences[id];
  if (sentence === undefined) return id;
  return sentence.replace(/\{(\w+)\}/gu, (_, name: string) => {
    const value = values[name];
    if (value === undefined) return "";
    return typeof value === "string" ? (show.catalogue.names[value] ?? value) : showIn(show, value);
  });
}

/** The sentence in English with metric workshop units. */
export function say(says: Says): string {
  return sayIn(workshop, says);
}

/** What a quantity, input or part is called. */
export function nameOf(id: string, catalogue: Catalogue = english): string {
  return catalogue.names[id] ?? id.replaceAll("-", " ");
}

/** Every sentence id of a catalogue, for the check that none is missing. */
export function allIds(catalogue: Catalogue = english): ReadonlySet<string> {
  return new Set(Object.keys(catalogue.sentences));
}
