import { readFileSync } from "node:fs";
import type { BoxPressureFacts } from "@ringwright/core/flush";
import { type GlandFiles, readGlandFacts } from "@ringwright/core/gland";
import type { ExpansionTable } from "@ringwright/core/heat";
import type { DripFacts } from "@ringwright/core/leak";
import { type RingFile, readRingFacts } from "@ringwright/core/rings";
import { type RodFile, readRodFacts } from "@ringwright/core/rods";
import type { SectionFacts, SectionTable, StockFacts } from "@ringwright/core/section";
import { readStemFacts, type StemFile } from "@ringwright/core/stems";
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
    gland: readGlandFacts({
      metric: readFacts<GlandFiles["metric"]>("threads/metric.json"),
      unified: readFacts<GlandFiles["unified"]>("threads/unified.json"),
      proofLoads: readFacts<GlandFiles["proofLoads"]>("threads/proof-loads.json"),
      classes: readFacts<GlandFiles["classes"]>("threads/classes.json"),
      nutFactors: readFacts<GlandFiles["nutFactors"]>("limits/nut-factor.json"),
    }),
    rings: readRingFacts(readFacts<RingFile>("limits/rings.json")),
    leak: { drip: inSi(readFacts("limits/drip.json")) as DripFacts },
    heat: { ptfeExpansion: readFacts<ExpansionTable>("tables/ptfe-expansion.json") },
    uncertainty: readUncertaintyFacts(),
    section: readSectionFacts(),
    rods: readRodFacts(readFacts<RodFile>("limits/rods.json")),
    stems: readStemFacts(readFacts<StemFile>("limits/stem-load.json")),
  };
}
