import { readFileSync } from "node:fs";
import type { BoxPressureFacts } from "@ringwright/core/flush";
import type { ExpansionTable } from "@ringwright/core/heat";
import type { SectionFacts, SectionTable, StockFacts } from "@ringwright/core/section";
import type { Instruments, PlausibleRanges, UncertaintyFacts } from "@ringwright/core/uncertainty";
import { inSi } from "./si.ts";

/** Finds data/ from here or from dist/ and reads one file of facts. */
export function readFacts<T>(path: string): T {
  const here = new URL(import.meta.url.includes("/dist/") ? "../" : "./", import.meta.url);
  return JSON.parse(readFileSync(new URL(path, here), "utf8")) as T;
}

function readUncertaintyFacts(): UncertaintyFacts {
  return {
    instruments: (inSi(readFacts("limits/instruments.json")) as { instruments: Instruments }).instruments,
    plausible: (inSi(readFacts("limits/plausible.json")) as { ranges: PlausibleRanges }).ranges,
  };
}

function readSectionFacts(): SectionFacts {
  return {
    stock: inSi(readFacts("sizes/stock-sections.json")) as StockFacts,
    tables: (inSi(readFacts("tables/section-by-diameter.json")) as { tables: readonly SectionTable[] }).tables,
  };
}

/** Reads every file of facts. */
export function readAllFacts() {
  return {
    flush: { boxPressure: readFacts<BoxPressureFacts>("limits/box-pressure.json") },
    heat: { ptfeExpansion: readFacts<ExpansionTable>("tables/ptfe-expansion.json") },
    uncertainty: readUncertaintyFacts(),
    section: readSectionFacts(),
  };
}
