import { formatQuantity, type Kind, type Kinds, type UnitSystem } from "@ringwright/core/units";
import type { Band, Says, Shown, Step, Uncertain } from "@ringwright/core/workings";
import { english, nameOf, type Show, sayIn } from "@ringwright/words";
import { heading, type Row, rows, wrap } from "../text/layout.ts";
import { workingsText } from "./workings.ts";

/** How the plan is printed. */
export interface Style {
  readonly system: UnitSystem;
  readonly workings: boolean;
}

/** Decimals to which a length is shown: what the tool in the hand can do. */
const decimals = { metric: 1, inch: 3 } as const;

/** A page of text that grows from the top, in the reader's words and units. */
export class Page {
  readonly #lines: string[] = [];
  readonly #show: Show;
  readonly style: Style;
  #rows: Row[] = [];

  constructor(style: Style) {
    this.style = style;
    this.#show = { catalogue: english, system: style.system };
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
  value<K extends Kind>(
    kind: K,
    value: Kinds[K],
    as: { readonly digits?: number; readonly decimals?: number; readonly unit?: string } = {},
  ): string {
    return formatQuantity(kind, value, { system: this.style.system, ...as });
  }

  /** A length to what a caliper can do. */
  length(value: Kinds["length"], places?: number): string {
    const shift = places === undefined ? 0 : places - decimals.metric;
    return this.value("length", value, { decimals: Math.max(0, decimals[this.style.system] + shift) });
  }

  /** A length with its standard uncertainty doubled: where it lies in about 95 of 100 cases. */
  uncertain(value: Uncertain<Kinds["length"]>, places = 2): string {
    if (value.u === 0) return this.length(value.mean, places);
    const [number = "", unit = ""] = this.length(value.mean, places).split("\u00a0");
    return `${number} ± ${this.length((2 * value.u) as Kinds["length"], places).split("\u00a0")[0]}\u00a0${unit}`;
  }

  band<K extends Kind>(
    kind: K,
    { low, high }: Band<Kinds[K]>,
    as: { readonly digits?: number; readonly decimals?: number; readonly unit?: string } = {},
  ): string {
    const [one = "", other = ""] = [this.value(kind, low, as), this.value(kind, high, as)];
    if (one === other) return one;
    const [number, unit] = one.split("\u00a0");
    return other.endsWith(`\u00a0${unit}`) ? `${number} to ${other}` : `${one} to ${other}`;
  }

  heading(id: string): void {
    this.#flush();
    this.#lines.push(heading(this.words(id).toUpperCase()));
  }

  row(label: string, value: string, note?: string, under?: string): void {
    this.#rows.push({ label, value, ...(note ? { note } : {}), ...(under ? { under } : {}) });
  }

  /** A line of text under what stands before it. */
  line(text: string, lead = "  "): void {
    this.#flush();
    this.#lines.push(wrap(text, lead));
  }

  raw(text: string): void {
    this.#flush();
    this.#lines.push(text);
  }

  /** What needs a hand, or can hurt one. */
  mark(text: string): void {
    this.line(text, "  ! ");
  }

  blank(): void {
    this.#flush();
    this.#lines.push("");
  }

  /** The workings of what was just shown, when they are asked for. */
  workings(part: string, ...parts: readonly ({ readonly ok: boolean; readonly workings?: readonly Step[] } | undefined)[]): void {
    if (!this.style.workings) return;
    const steps = parts.flatMap((part) => (part?.ok && part.workings ? part.workings : []));
    if (steps.length > 0) this.raw(`\n    ${this.words("plan-workings", { part })}\n${workingsText(steps, this.style.system)}`);
  }

  text(): string {
    this.#flush();
    return `${this.#lines.join("\n").trim()}\n`;
  }

  #flush(): void {
    if (this.#rows.length === 0) return;
    this.#lines.push(rows(this.#rows));
    this.#rows = [];
  }
}
