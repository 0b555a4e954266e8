import { signal } from "@preact/signals";
import type { PlanFacts } from "@ringwright/core/plan";
import { factsFrom } from "@ringwright/data/assemble";

const files = import.meta.glob<unknown>(
  [
    "../../data/{limits,sizes,steps,run-in,cautions,threads,materials}/*.json",
    "../../data/tables/{section-by-diameter,ptfe-expansion}.json",
    "!../../data/materials/styles.json",
  ],
  { eager: true, import: "default" },
);

/** All facts, with these styles of packing: they are the heaviest file, and a box can be measured and drawn without. */
function factsWith(styles: unknown): PlanFacts {
  return factsFrom(<T>(path: string): T => {
    const found = path === "materials/styles.json" ? styles : files[`../../data/${path}`];
    if (found === undefined) throw new Error(`data/${path} is not built into the app`);
    return found as T;
  });
}

/** All facts of the program, and whether the packings have come yet. */
export const facts = signal<{ readonly all: PlanFacts; readonly packings: boolean }>({ all: factsWith({ styles: [] }), packings: false });

/** Brings the styles of packing. */
export async function loadPackings(): Promise<void> {
  if (facts.peek().packings) return;
  const { default: styles } = await import("../../data/materials/styles.json");
  facts.value = { all: factsWith(styles), packings: true };
}
