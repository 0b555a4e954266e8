import type { CautionFact, CautionFacts, FamilyFact, FluidHazards } from "@ringwright/core/cautions";
import { type ConditionFacts, conditionFacts, type ItemFact } from "@ringwright/core/condition";
import type { FitFacts, SettingFact, StepFact } from "@ringwright/core/fit";
import type { FlushFacts } from "@ringwright/core/flush";
import { type GlandFacts, type GlandFiles, readGlandFacts } from "@ringwright/core/gland";
import type { HeatFacts } from "@ringwright/core/heat";
import type { DripFacts } from "@ringwright/core/leak";
import { type MaterialsFacts, readMaterials } from "@ringwright/core/materials";
import { type RingFile, readRingFacts } from "@ringwright/core/rings";
import { type RodFile, readRodFacts } from "@ringwright/core/rods";
import type { RunInFacts, ScheduleFact, StopRuleFact } from "@ringwright/core/run-in";
import type { SectionFacts, SectionTable, StockFacts } from "@ringwright/core/section";
import { readStemFacts, type StemFile } from "@ringwright/core/stems";
import type { Instruments, PlausibleRanges, UncertaintyFacts } from "@ringwright/core/uncertainty";
import { inSi } from "./si.ts";

/** Reads one file of facts by its path under data/, such as `limits/rings.json`. */
export type ReadFile = <T>(path: string) => T;

function readUncertaintyFacts(readFacts: ReadFile): UncertaintyFacts {
  return {
    instruments: (inSi(readFacts("limits/instruments.json")) as { instruments: Instruments }).instruments,
    plausible: (inSi(readFacts("limits/plausible.json")) as { ranges: PlausibleRanges }).ranges,
  };
}

function readSectionFacts(readFacts: ReadFile): SectionFacts {
  return {
    stock: inSi(readFacts("sizes/stock-sections.json")) as StockFacts,
    tables: (inSi(readFacts("tables/section-by-diameter.json")) as { tables: readonly SectionTable[] }).tables,
  };
}

function readCautionFacts(readFacts: ReadFile): CautionFacts {
  const { families, pittingSleeves } = readFacts<{ families: readonly FamilyFact[]; pittingSleeves: readonly string[] }>(
    "cautions/families.json",
  );
  return {
    cautions: readFacts<{ cautions: readonly CautionFact[] }>("cautions/cautions.json").cautions,
    fluids: readFacts<{ fluids: readonly FluidHazards[] }>("cautions/fluids.json").fluids,
    families,
    pittingSleeves,
  };
}

function readFitFacts(readFacts: ReadFile): FitFacts {
  const steps = (group: string) => readFacts<{ steps: readonly StepFact[] }>(`steps/${group}.json`).steps;
  return {
    groups: {
      kit: steps("kit"),
      isolate: steps("isolate"),
      open: steps("open"),
      clean: steps("clean"),
      inspect: steps("inspect"),
      cut: steps("cut"),
      fit: steps("fit"),
      close: steps("close"),
      start: steps("start"),
    },
    reasons: readFacts<{ reasons: readonly string[] }>("steps/reasons.json").reasons,
    settings: readFacts<{ settings: readonly SettingFact[] }>("steps/settings.json").settings,
  };
}

function readRunInFacts(readFacts: ReadFile): RunInFacts {
  return {
    groups: readFacts<{ groups: RunInFacts["groups"] }>("run-in/steps.json").groups,
    settings: readFacts<{ settings: readonly SettingFact[] }>("run-in/settings.json").settings,
    schedules: readFacts<{ schedules: readonly ScheduleFact[] }>("run-in/schedules.json").schedules,
    stopRules: readFacts<{ rules: readonly StopRuleFact[] }>("run-in/stop-rules.json").rules,
  };
}

function readMaterialsFacts(readFacts: ReadFile): MaterialsFacts {
  const file = (name: string) => readFacts(`materials/${name}.json`);
  return readMaterials({
    styles: file("styles"),
    lubricants: file("lubricants"),
    elastomers: file("elastomers"),
    fluids: file("fluids"),
    sleeves: file("sleeves"),
    lanternRings: file("lantern-rings"),
    endRings: file("end-rings"),
    pressureSpeed: file("pressure-speed"),
    selection: file("selection"),
  });
}

function readFlushFacts(readFacts: ReadFile): FlushFacts {
  return {
    boxPressure: inSi(readFacts("limits/box-pressure.json")) as FlushFacts["boxPressure"],
    flushPressure: inSi(readFacts("limits/flush-pressure.json")) as FlushFacts["flushPressure"],
  };
}

function readGlandFiles(readFacts: ReadFile): GlandFacts {
  return readGlandFacts({
    metric: readFacts<GlandFiles["metric"]>("threads/metric.json"),
    unified: readFacts<GlandFiles["unified"]>("threads/unified.json"),
    proofLoads: readFacts<GlandFiles["proofLoads"]>("threads/proof-loads.json"),
    classes: readFacts<GlandFiles["classes"]>("threads/classes.json"),
    nutFactors: readFacts<GlandFiles["nutFactors"]>("limits/nut-factor.json"),
  });
}

function readConditionFacts(readFacts: ReadFile): ConditionFacts {
  return conditionFacts((inSi(readFacts("limits/condition.json")) as { items: readonly ItemFact[] }).items);
}

/** Reads at the first use, and keeps. */
function once<Facts>(read: () => Facts): () => Facts {
  let kept: { readonly facts: Facts } | undefined;
  return () => {
    kept ??= { facts: read() };
    return kept.facts;
  };
}

/** All facts; each file is read when what stands in it is first asked for, so that one small answer need not wait for the rest. */
export function factsFrom(readFacts: ReadFile) {
  const flush = once(() => readFlushFacts(readFacts));
  const gland = once(() => readGlandFiles(readFacts));
  const rings = once(() => readRingFacts(readFacts<RingFile>("limits/rings.json")));
  const leak = once(() => ({ drip: inSi(readFacts("limits/drip.json")) as DripFacts }));
  const heat = once(() => ({ ptfeExpansion: inSi(readFacts("tables/ptfe-expansion.json")) as HeatFacts["ptfeExpansion"] }));
  const uncertainty = once(() => readUncertaintyFacts(readFacts));
  const section = once(() => readSectionFacts(readFacts));
  const rods = once(() => readRodFacts(readFacts<RodFile>("limits/rods.json")));
  const stems = once(() => readStemFacts(readFacts<StemFile>("limits/stem-load.json")));
  const cautions = once(() => readCautionFacts(readFacts));
  const fit = once(() => readFitFacts(readFacts));
  const runIn = once(() => readRunInFacts(readFacts));
  const condition = once(() => readConditionFacts(readFacts));
  const materials = once(() => readMaterialsFacts(readFacts));
  return {
    get flush() {
      return flush();
    },
    get gland() {
      return gland();
    },
    get rings() {
      return rings();
    },
    get leak() {
      return leak();
    },
    get heat() {
      return heat();
    },
    get uncertainty() {
      return uncertainty();
    },
    get section() {
      return section();
    },
    get rods() {
      return rods();
    },
    get stems() {
      return stems();
    },
    get cautions() {
      return cautions();
    },
    get fit() {
      return fit();
    },
    get runIn() {
      return runIn();
    },
    get condition() {
      return condition();
    },
    get materials() {
      return materials();
    },
  };
}
