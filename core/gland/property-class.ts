import type { Citation } from "../sources/index.ts";
import { type Length, quantity, type Stress } from "../units/index.ts";
import { type Refused, type Rule, refuse, rule } from "../workings/index.ts";

interface StressUpTo {
  readonly stress: number;
  readonly upTo?: number;
}

/** data/threads/classes.json, in the units it is printed in. */
export interface ClassFile {
  readonly lowest: { readonly steel: string; readonly stainless: string };
  readonly groups: readonly {
    readonly unit: string;
    readonly sizeUnit: string;
    readonly classes: readonly {
      readonly class: string;
      readonly material: string;
      readonly citation: Citation;
      readonly proof: readonly StressUpTo[];
      readonly yield: readonly StressUpTo[];
      readonly upTo?: number;
    }[];
  }[];
}

/** Stress by diameter: the first row that reaches the diameter. */
type BySize = readonly { readonly stress: Stress; readonly upTo: number }[];

export interface PropertyClass {
  /** As marked on the head: `8.8`, `A2-70`, `B7`. */
  readonly name: string;
  readonly proof: BySize;
  readonly yield: BySize;
  /** Largest diameter these stresses hold for. */
  readonly upTo: number;
  /** Whether the 0.2 % stress stands in place of a proof stress. */
  readonly standsIn: boolean;
  readonly proofRule: Rule;
  readonly yieldRule: Rule;
}

export interface ClassFacts {
  readonly byKey: ReadonlyMap<string, PropertyClass>;
  readonly lowestSteel: PropertyClass;
  readonly lowestStainless: PropertyClass;
  readonly names: readonly string[];
}

function key(text: string): string {
  return text
    .slice(0, 40)
    .toUpperCase()
    .replace(/,/gu, ".")
    .replace(/^(?:GRADE|GR\.?|CLASS|SAE) ?(?=[258]$)/u, "SAE")
    .replace(/[^A-Z0-9.]/gu, "");
}

const ungraded: ReadonlySet<string> = new Set(["", "UNKNOWN", "UNGRADED", "UNMARKED", "NONE"]);
const ungradedStainless: ReadonlySet<string> = new Set(["UNGRADEDSTAINLESS", "STAINLESS", "A2", "A4"]);

/** Turns the classes, as printed, into what `findClass` looks up. */
export function readClasses(file: ClassFile): ClassFacts {
  const diameter = [{ symbol: "d", name: "thread-diameter", unit: "m" }];
  const classes = file.groups.flatMap((group) =>
    group.classes.map((entry): PropertyClass => {
      const bySize = (rows: readonly StressUpTo[]): BySize =>
        rows.map((row) => ({
          stress: quantity("stress", row.stress, group.unit),
          upTo: row.upTo === undefined ? Number.POSITIVE_INFINITY : quantity("length", row.upTo, group.sizeUnit),
        }));
      const standsIn = entry.citation.at?.includes("in place of") ?? false;
      return {
        name: entry.class,
        proof: bySize(entry.proof),
        yield: bySize(entry.yield),
        upTo: entry.upTo === undefined ? Number.POSITIVE_INFINITY : quantity("length", entry.upTo, group.sizeUnit),
        standsIn,
        proofRule: rule({
          id: standsIn ? "yield-for-proof-stress" : "proof-stress",
          symbol: standsIn ? "R_p0.2" : "S_p",
          expression: `${standsIn ? "R_p0.2" : "S_p"}(${entry.class}, d)`,
          unit: "Pa",
          inputs: diameter,
          citation: entry.citation,
        }),
        yieldRule: rule({
          id: "yield-stress",
          symbol: "R_p0.2",
          expression: `R_p0.2(${entry.class}, d)`,
          unit: "Pa",
          inputs: diameter,
          citation: standsIn
            ? entry.citation
            : { source: entry.citation.source, at: "yield or 0.2 % stress, specified minimum", seen: "memory" },
        }),
      };
    }),
  );
  const byKey = new Map(classes.map((entry) => [key(entry.name), entry]));
  const lowest = (name: string): PropertyClass => {
    const found = byKey.get(key(name));
    if (!found) throw new RangeError(`data/threads/classes.json names no class ${name}`);
    return found;
  };
  return {
    byKey,
    lowestSteel: lowest(file.lowest.steel),
    lowestStainless: lowest(file.lowest.stainless),
    names: classes.map((entry) => entry.name),
  };
}

/** The class marked on a stud, or the lowest one when nothing is marked; `assumed` then says so. */
export function findClass(
  propertyClass: string | undefined,
  facts: ClassFacts,
): Refused | { readonly ok: true; readonly value: PropertyClass; readonly assumed: boolean } {
  const asked = key(propertyClass ?? "");
  if (ungraded.has(asked)) return { ok: true, value: facts.lowestSteel, assumed: true };
  if (ungradedStainless.has(asked)) return { ok: true, value: facts.lowestStainless, assumed: true };
  const found = facts.byKey.get(asked);
  if (found) return { ok: true, value: found, assumed: false };
  return refuse({
    kind: "not-known",
    input: "propertyClass",
    given: propertyClass ?? "",
    allowed: [...facts.names, "unknown", "ungraded-stainless"],
    says: { id: "class-not-known", with: { given: propertyClass ?? "" } },
  });
}

/** The stress that holds for a diameter. */
export function forDiameter(rows: BySize, diameter: Length): Stress {
  // A micrometre of slack: 16 mm and 5/8 in written in metres must not fall past their own row.
  const found = rows.find((row) => diameter <= row.upTo + 1e-6) ?? rows.at(-1);
  return found?.stress ?? (Number.NaN as Stress);
}
