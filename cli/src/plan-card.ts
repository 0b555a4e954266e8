import type { Paper } from "@ringwright/card";
import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import { say } from "@ringwright/words";
import type { Drawn } from "./plan-drawings.ts";
import type { Streams } from "./streams.ts";

export interface CardAsked {
  readonly file: string;
  readonly paper: Paper;
}

/**
 * Writes the card of a plan, and tells what became of it. Card, PDF library and fonts are loaded only here.
 */
export async function writeCard(plan: Found<Plan>, { file, paper }: CardAsked, system: UnitSystem, streams: Streams): Promise<Drawn> {
  const { printCard } = await import("@ringwright/server/cards");
  const bytes = await printCard(plan, { system, paper, now: streams.now() });
  try {
    streams.write(file, bytes);
    return { line: say({ id: "plan-card-written", with: { file } }), failed: false };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { line: say({ id: "plan-card-not-written", with: { file, why } }), failed: true };
  }
}
