import type { Motion } from "@ringwright/core/box";
import type { How } from "@ringwright/core/uncertainty";
import type { Kind } from "@ringwright/core/units";
import type { EntryKind, Json } from "@ringwright/logbook";

/** Chapters of the survey, in the order of the work. */
export const chapters = ["box", "shaft", "bore", "depth", "lantern", "follower", "service", "flush", "condition", "hazards"] as const;
export type Chapter = (typeof chapters)[number];

/** What kind of answer a question takes. */
export type Asks =
  /** Readings and how they were taken; `twice`: worth a second reading with the first hidden. */
  | { readonly is: "dimension"; readonly hows: readonly How[]; readonly twice: boolean }
  | { readonly is: "quantity"; readonly kind: Kind; readonly common?: readonly string[] }
  | { readonly is: "clock-gaps" }
  | { readonly is: "count" }
  | { readonly is: "number" }
  | { readonly is: "text"; readonly common?: readonly string[] }
  | { readonly is: "yes-no" }
  /** One of a few; `unknown` is what "don't know" is called there, null where it has no word of its own. */
  | { readonly is: "choice"; readonly options: readonly string[]; readonly unknown: string | null }
  /** Any of a few. */
  | { readonly is: "several"; readonly options: readonly string[] }
  /** Out of a long list of facts. */
  | { readonly is: "list"; readonly of: "fluids" | "sleeves"; readonly most: number };

/** What is known of a box so far, as `ringwright plan` would be asked. */
export type Known = { readonly [name: string]: Json };

/** One question of the survey. Its words stand under `ask-`, `why-`, `how-` and `instead-` with its id. */
export interface Question {
  readonly id: string;
  /** Field of the survey, in dots. */
  readonly field: string;
  readonly chapter: Chapter;
  readonly asks: Asks;
  /** Shafts it is asked of; all where left out. */
  readonly motions?: readonly Motion[];
  /** Asked only where the answers before leave it open. */
  readonly when?: (known: Known) => boolean;
  /** Part of the drawing that the picture marks, and the dimension asked for. */
  readonly part?: string;
  readonly dimension?: string;
}

/** What is known under a field's name in dots. */
export function known(of: Known, field: string): Json | undefined {
  let at: Json | undefined = of;
  for (const name of field.split(".")) {
    if (typeof at !== "object" || at === null || Array.isArray(at)) return undefined;
    at = (at as { readonly [name: string]: Json })[name];
  }
  return at;
}

const described: ReadonlySet<string> = new Set(["name", "place", "motion", "release", "zone", "datum", "service"]);

/** The kind of entry that answers a field: what the box is, what was settled of its set, or what was read at it. */
export function entryKind(field: string): Extract<EntryKind, "box-described" | "rings-chosen" | "measured"> {
  const [first = ""] = field.split(".");
  if (first === "set") return "rings-chosen";
  return described.has(first) ? "box-described" : "measured";
}
