import { formatQuantity, type Kind, type Kinds, type UnitSystem } from "@ringwright/core/units";
import type { Band, Says, Shown, Step, Uncertain } from "@ringwright/core/workings";
import { english } from "#english";
import { nameOf, type Show, sayIn } from "../say.ts";

/** A label with its value; `by` says in which ink it belongs. */
export interface PlanRow {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
  /** A remark of its own under the row. */
  readonly under?: string;
  readonly by: "measured" | "worked";
  /** It was not measured: on paper there is room to write it. */
  readonly blank?: true;
  /** The note asks for something. */
  readonly asks?: true;
}

/** What a row has beside label, value and note. */
type RowMarks = Partial<Pick<PlanRow, "under" | "by" | "blank" | "asks">>;

/** One piece of a plan as a person reads it, before anyone has decided where it stands on a page. */
export type PlanBlock =
  | { readonly kind: "row"; readonly row: PlanRow }
  /** A line; `point` stands before it: a number, a dot, a question mark. Under: it belongs to the line above. Aside: can be left out where room is short. */
  | { readonly kind: "line"; readonly text: string; readonly point?: string; readonly under?: boolean; readonly aside?: true }
  /** What needs a hand, or can hurt one. */
  | { readonly kind: "mark"; readonly text: string }
  /** The workings of what stands before it. */
  | { readonly kind: "workings"; readonly part: string; readonly steps: readonly Step[] };

/** A part of the plan under its heading. */
export interface PlanSection {
  /** Without its `plan-heading-`. */
  readonly id: string;
  readonly heading: string;
  readonly blocks: readonly PlanBlock[];
}

/** Decimals to which a length is shown: what the tool in the hand can do. */
const decimals = { metric: 1, inch: 3 } as const;

interface As {
  readonly digits?: number;
  readonly decimals?: number;
  readonly unit?: string;
}

/** Gathers a plan in the reader's words and units, section by section. */
export class PlanPage {
  readonly #sections: { id: string; heading: string; blocks: PlanBlock[] }[] = [];
  readonly #show: Show;
  readonly system: UnitSystem;

  constructor(system: UnitSystem) {
    this.system = system;
    this.#show = { catalogue: english, system };
  }

  get sections(): readonly PlanSection[] {
    return this.#sections;
  }

  /** The words for an id. */
  words(id: string, values: Readonly<Record<string, Shown>> = {}): string {
    return sayIn(this.#show, { id, with: values });
  }

  sentence(says: Says): string {
    return sayIn(this.#show, says);
  }

  name(id: string): string {
    return nameOf(id);
  }

  /** A quantity in the reader's unit. */
  value<K extends Kind>(kind: K, value: Kinds[K], as: As = {}): string {
    return formatQuantity(kind, value, { system: this.system, ...as });
  }

  /** A length to what a caliper can do. */
  length(value: Kinds["length"], places?: number): string {
    const shift = places === undefined ? 0 : places - decimals.metric;
    return this.value("length", value, { decimals: Math.max(0, decimals[this.system] + shift) });
  }

  /** A length with its standard uncertainty doubled: where it lies in about 95 of 100 cases. Never shown surer than it is: ± nought takes more digits. */
  uncertain(value: Uncertain<Kinds["length"]>, places = 2): string {
    if (value.u === 0) return this.length(value.mean, places);
    const spread = this.length((2 * value.u) as Kinds["length"], places).split("\u00a0")[0] ?? "";
    if (!/[1-9]/u.test(spread) && places < 4) return this.uncertain(value, places + 1);
    const [number = "", unit = ""] = this.length(value.mean, places).split("\u00a0");
    return `${number} ± ${spread}\u00a0${unit}`;
  }

  band<K extends Kind>(kind: K, { low, high }: Band<Kinds[K]>, as: As = {}): string {
    const [one = "", other = ""] = [this.value(kind, low, as), this.value(kind, high, as)];
    if (one === other) return one;
    const [number, unit] = one.split("\u00a0");
    return other.endsWith(`\u00a0${unit}`) ? `${number} to ${other}` : `${one} to ${other}`;
  }

  /** Begins a section. */
  heading(id: string): void {
    this.#sections.push({ id: id.replace(/^plan-heading-/u, ""), heading: this.words(id), blocks: [] });
  }

  row(label: string, value: string, note?: string, { under, by = "worked", ...marks }: RowMarks = {}): void {
    this.#add({ kind: "row", row: { label, value, ...(note ? { note } : {}), ...(under ? { under } : {}), by, ...marks } });
  }

  line(text: string, point?: string): void {
    this.#add({ kind: "line", text, ...(point === undefined ? {} : { point }) });
  }

  /** A line that belongs to the one above it. */
  under(text: string, point?: string): void {
    this.#add({ kind: "line", text, under: true, ...(point === undefined ? {} : { point }) });
  }

  /** A line that can be left out where room is short, beside the others or under one. */
  aside(text: string, as: { readonly point?: string; readonly under?: boolean } = {}): void {
    this.#add({ kind: "line", text, ...as, aside: true });
  }

  mark(text: string): void {
    this.#add({ kind: "mark", text });
  }

  /** The workings of what was just shown. */
  workings(part: string, ...parts: readonly ({ readonly ok: boolean; readonly workings?: readonly Step[] } | undefined)[]): void {
    const steps = parts.flatMap((one) => (one?.ok && one.workings ? one.workings : []));
    if (steps.length > 0) this.#add({ kind: "workings", part, steps });
  }

  #add(block: PlanBlock): void {
    this.#sections.at(-1)?.blocks.push(block);
  }
}
