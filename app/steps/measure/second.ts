import type { Instruments } from "@ringwright/core/uncertainty";
import type { Length } from "@ringwright/core/units";
import { readTyping } from "../../parts/quantity/typing.ts";
import type { Draft } from "./draft.ts";

/** What the readings that were put aside and those taken since say of each other. */
export interface Compared {
  readonly first: Length;
  readonly second: Length;
  /** Whether the way they were taken explains the difference. */
  readonly agree: boolean;
}

/**
 * Compares a second reading with the first: they agree when they differ by no
 * more than twice what the way of measuring may be wrong by, and one step of
 * its scale. Our own proposal.
 */
export function compared(draft: Draft, instruments: Instruments): Compared | undefined {
  const { aside = 0, how = "unknown", typed } = draft;
  const values = typed.map((typing) => readTyping(typing, "length", ""));
  const first = mean(values.slice(0, aside));
  const second = mean(values.slice(aside));
  if (first === undefined || second === undefined) return undefined;
  const { limitOfError, resolution } = instruments[how];
  return { first, second, agree: Math.abs(first - second) <= 2 * limitOfError + resolution };
}

function mean(read: readonly ReturnType<typeof readTyping>[]): Length | undefined {
  const values = read.flatMap((one) => (one.kind === "read" ? [one.value as number] : []));
  return values.length === 0 ? undefined : ((values.reduce((sum, value) => sum + value, 0) / values.length) as Length);
}
