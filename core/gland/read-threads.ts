import type { Citation } from "../sources/index.ts";
import { type Area, type Force, type Length, quantity } from "../units/index.ts";
import { type Rule, rule } from "../workings/index.ts";
import type { Thread, ThreadFacts, ThreadRules } from "./thread.ts";
import { inchKey } from "./thread-key.ts";

interface Series<Row> {
  readonly series: string;
  readonly citation: Citation;
  readonly areaCitation?: Citation;
  readonly rows: readonly Row[];
}
interface MetricRow {
  readonly name: string;
  readonly diameter: number;
  readonly pitch: number;
  readonly stressArea?: number;
}
interface UnifiedRow {
  readonly name: string;
  readonly diameter: number;
  readonly threadsPerInch: number;
}

/** data/threads/metric.json, unified.json and proof-loads.json, in the units they are printed in. */
export interface ThreadFiles {
  readonly metric: { readonly unit: string; readonly areaUnit: string; readonly series: readonly Series<MetricRow>[] };
  readonly unified: { readonly unit: string; readonly series: readonly Series<UnifiedRow>[] };
  readonly proofLoads: {
    readonly unit: string;
    readonly citation: Citation;
    readonly rows: readonly { readonly thread: string; readonly loads: Readonly<Record<string, number>> }[];
  };
}

const diameterInput = { symbol: "d", name: "thread-diameter", unit: "m" } as const;

function pitchRule(citation: Citation): Rule {
  return rule({ id: "thread-pitch", symbol: "P", expression: "P(d)", unit: "m", inputs: [diameterInput], citation });
}

function areaRule(citation: Citation): Rule {
  return rule({
    id: "stress-area-printed",
    symbol: "A_s",
    name: "stress-area",
    expression: "A_s(d)",
    unit: "m2",
    inputs: [diameterInput],
    citation,
  });
}

function loadRule(citation: Citation): Rule {
  return rule({
    id: "proof-load-printed",
    symbol: "F_p",
    name: "proof-load",
    expression: "F_p(d, class)",
    unit: "N",
    inputs: [diameterInput],
    citation,
  });
}

/** Turns the thread tables, as printed, into what `findThread` looks up. */
export function readThreads(files: ThreadFiles): ThreadFacts {
  const loadRules = loadRule(files.proofLoads.citation);
  const loads = new Map(files.proofLoads.rows.map((row) => [row.thread, row.loads]));
  const byKey = new Map<string, Thread>();
  const bySize = new Map<string, string[]>();
  const names: string[] = [];
  const add = (thread: Thread, keys: readonly string[]) => {
    names.push(thread.name);
    for (const key of [thread.name, ...keys]) byKey.set(key, thread);
  };
  for (const series of files.metric.series) {
    const rules: ThreadRules = {
      pitch: pitchRule(series.citation),
      ...(series.areaCitation ? { printedArea: areaRule(series.areaCitation), printedLoad: loadRules } : {}),
    };
    for (const row of series.rows) {
      const printed = loads.get(row.name);
      add(
        {
          name: row.name,
          family: "metric",
          diameter: quantity("length", row.diameter, files.metric.unit),
          pitch: quantity("length", row.pitch, files.metric.unit),
          ...(row.stressArea === undefined ? {} : { printedArea: quantity("area", row.stressArea, files.metric.areaUnit) as Area }),
          ...(printed ? { printedLoads: inNewtons(printed, files.proofLoads.unit) } : {}),
          rules,
        },
        [`m${row.diameter}x${row.pitch}`, ...(series.series === "metric-coarse" ? [`m${row.diameter}`] : [])],
      );
    }
  }
  for (const series of files.unified.series) {
    const rules = { pitch: pitchRule(series.citation) };
    for (const row of series.rows) {
      const { diameter, threadsPerInch: threads, name } = row;
      const size = inchKey(diameter);
      bySize.set(size, [...(bySize.get(size) ?? []), name]);
      const letters = name.split(" ").at(-1)?.toLowerCase() ?? "";
      add(
        {
          name,
          family: "unified",
          diameter: quantity("length", diameter, files.unified.unit),
          pitch: quantity("length", 1 / threads, files.unified.unit) as Length,
          rules,
        },
        [inchKey(diameter, threads), inchKey(diameter, undefined, letters), ...["un", letters].map((s) => inchKey(diameter, threads, s))],
      );
    }
  }
  return { byKey, bySize, names };
}

function inNewtons(loads: Readonly<Record<string, number>>, unit: string): Record<string, Force> {
  return Object.fromEntries(Object.entries(loads).map(([name, load]) => [name, quantity("force", load, unit)]));
}
