import { signal } from "@preact/signals";
import type { PlanFacts } from "@ringwright/core/plan";
import { factsFrom } from "@ringwright/data/assemble";
import { learn } from "@ringwright/words/learn";

type Files = Readonly<Record<string, unknown>>;

/** What a box can be measured, judged and drawn with. */
const first = import.meta.glob<unknown>(
  [
    "../../data/{limits,sizes,cautions,threads,materials}/*.json",
    "../../data/{steps,run-in}/{settings,reasons}.json",
    "../../data/tables/{section-by-diameter,ptfe-expansion}.json",
    "!../../data/materials/{styles,fluids}.json",
  ],
  { eager: true, import: "default" },
);

/** Until the rest has come no packing is known, and no step. */
const nothing: Files = {
  "materials/styles.json": { styles: [] },
  "materials/fluids.json": { chemistries: [], fluids: [] },
  "run-in/steps.json": { groups: { run: [], settle: [], check: [] } },
  "run-in/schedules.json": { schedules: [] },
  "run-in/stop-rules.json": { rules: [] },
};

function factsWith(rest: Files | undefined): PlanFacts {
  return factsFrom(<T>(path: string): T => {
    const at = `../../data/${path}`;
    const found = first[at] ?? (rest ? rest[at] : (nothing[path] ?? (path.startsWith("steps/") ? { steps: [] } : undefined)));
    if (found === undefined) throw new Error(`data/${path} is not built into the app`);
    return found as T;
  });
}

/** All facts of the program; until they are `whole`, without packings, fluids and steps, which are the heaviest. */
export const facts = signal<{ readonly all: PlanFacts; readonly whole: boolean }>({ all: factsWith(undefined), whole: false });

/** Brings packings, fluids and steps, and the words that go with them. */
export async function loadRest(): Promise<void> {
  if (facts.peek().whole) return;
  const [{ rest }, { rest: words }] = await Promise.all([import("./rest.ts"), import("@ringwright/words/rest")]);
  learn(words);
  facts.value = { all: factsWith(rest), whole: true };
}

/** Brings the rest when nobody waits for anything. Chromium and Firefox say when; elsewhere a moment must do. */
export function loadRestWhenIdle(): void {
  if (facts.peek().whole) return;
  // Without a signal it is tried again when there is one; a screen that needs it meanwhile says so.
  const load = () => void loadRest().catch(() => addEventListener("online", load, { once: true }));
  if ("requestIdleCallback" in globalThis) requestIdleCallback(load, { timeout: 5000 });
  else setTimeout(load, 1000);
}
