import type { Seen, SourceId } from "../sources/index.ts";
import { inUnit, type Length, quantity } from "../units/index.ts";
import { type Answer, type Band, band, begin, outside, type Rule, rule } from "../workings/index.ts";

/** One band of a table of sections by shaft diameter. `over` is not part of the band, `from` and `to` are. */
export interface DiameterBand {
  readonly over?: Length;
  readonly from?: Length;
  readonly to?: Length;
  readonly section: Length;
  /** How this one band was seen, where it differs from its table. */
  readonly seen?: Seen;
}

/** A published table that gives a section for a shaft. */
export interface SectionTable {
  readonly id: string;
  readonly source: SourceId;
  readonly at: string;
  readonly seen: Seen;
  /** Ascending. */
  readonly bands: readonly DiameterBand[];
}

/** What one table or rule would give this shaft; both ends differ where the shaft lies between two of its bands. */
export interface SectionOpinion {
  readonly id: string;
  readonly section: Band<Length>;
}

export interface SectionOpinions {
  readonly opinions: readonly SectionOpinion[];
  /** Tables that say nothing about this shaft. */
  readonly silent: readonly string[];
  /** Section of this box over the root of its shaft in millimetres, where the section is given. */
  readonly ratio?: number;
}

const rootRule = rule({
  id: "section-root-rule",
  symbol: "s",
  expression: "(1.4 to 2) √(d/mm) mm",
  unit: "m",
  inputs: [{ symbol: "d", name: "shaft", unit: "m" }],
  citation: { source: "memory", at: "Chinese design texts" },
});

const ratioRule = rule({
  id: "section-root-ratio",
  symbol: "c",
  expression: "s/mm / √(d/mm)",
  unit: "1",
  inputs: [
    { symbol: "s", name: "section", unit: "m" },
    { symbol: "d", name: "shaft", unit: "m" },
  ],
  citation: { source: "definition" },
});

/**
 * What published tables would choose for a shaft of this diameter, shown
 * beside the real gap as opinion. The box decides, never the table.
 *
 * Units: m; the ratio is of numbers in millimetres.
 * Range: shaft above 0 to 5 m, section above 0 to 1 m; refused outside. A table that ends before the shaft is silent.
 * Source: Neale, Tribology Handbook, 1995, table 25.2; DIN 3780:1954 and the inch series from memory; root rule from memory.
 * @example sectionOpinions({ shaft: quantity("length", 50, "mm") }, facts.sectionTables) // 8 mm by the braid table
 */
export function sectionOpinions(
  given: { readonly shaft: Length; readonly section?: Length },
  tables: readonly SectionTable[],
): Answer<SectionOpinions> {
  const { shaft, section } = given;
  const refused = outside([
    ["shaft", shaft, { min: Number.MIN_VALUE, max: 5 }, "m"],
    ["section", section ?? 1, { min: Number.MIN_VALUE, max: 1 }, "m"],
  ]);
  if (refused) return refused;
  const work = begin();
  const opinions: SectionOpinion[] = [];
  const silent: string[] = [];
  for (const table of tables) {
    const [low, high] = bandsFor(table, shaft);
    if (!low || !high) silent.push(table.id);
    else {
      const one = work.step(tableRule(table, low), [shaft], low.section);
      const other = low === high ? one : work.step(tableRule(table, high), [shaft], high.section);
      opinions.push({ id: table.id, section: band(one, other) });
    }
  }
  const root = Math.sqrt(inUnit("length", shaft, "mm"));
  const [thin, thick] = [quantity("length", 1.4 * root, "mm"), quantity("length", 2 * root, "mm")];
  work.step(rootRule, [shaft], thin);
  work.step(rootRule, [shaft], thick);
  opinions.push({ id: rootRule.id, section: band(thin, thick) });
  if (section === undefined) return work.found({ opinions, silent });
  const ratio = work.step(ratioRule, [section, shaft], inUnit("length", section, "mm") / root);
  return work.found({ opinions, silent, ratio });
}

function tableRule(table: SectionTable, entry: DiameterBand): Rule {
  return rule({
    id: table.id,
    symbol: "s",
    expression: "read off the table",
    unit: "m",
    inputs: [{ symbol: "d", name: "shaft", unit: "m" }],
    citation: { source: table.source, at: table.at, seen: entry.seen ?? table.seen },
  });
}

/** The band that holds a shaft, twice; or the two about it; or nothing beyond the table's ends. */
function bandsFor(table: SectionTable, shaft: number): readonly [DiameterBand?, DiameterBand?] {
  let below: DiameterBand | undefined;
  for (const entry of table.bands) {
    const starts = entry.over === undefined ? shaft >= (entry.from ?? 0) : shaft > entry.over;
    if (starts && shaft <= (entry.to ?? Number.POSITIVE_INFINITY)) return [entry, entry];
    if (!starts) return below ? [below, entry] : [];
    below = entry;
  }
  return [];
}
