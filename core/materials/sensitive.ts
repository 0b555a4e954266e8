import type { Candidate, Compared, Reason, Rejected } from "./reason.ts";

/** An input that need only be a little wrong for the answer to change. */
export interface Sensitive {
  readonly input: "temperature" | "speed" | "pressure" | "ph" | "sleeve-hardness";
  /** Styles that would be stopped if it were a tenth nearer the limit. */
  readonly lost: readonly string[];
  /** Styles that would no longer be stopped by it if it were a tenth further off. */
  readonly gained: readonly string[];
}

const inputs = ["temperature", "speed", "pressure", "ph", "sleeve-hardness"] as const;

function tight(binding: { readonly constraint: string; readonly compared?: Compared }, input: string, rejected: boolean): boolean {
  if (binding.constraint !== input || !binding.compared) return false;
  const { share } = binding.compared;
  // A figure a tenth out: uses above 1/1.1 of a limit pass it, uses up to 1/0.9 come back under it.
  return rejected ? share <= 1 / 0.9 : share > 1 / 1.1;
}

const onlyStop = (because: readonly Reason[]) => because.filter(({ kind }) => kind === "stop").length === 1;

/** Which inputs, a tenth wrong, would change who is in and who is out by their binding constraint. */
export function sensitivities(ranked: readonly Candidate[], rejected: readonly Rejected[]): readonly Sensitive[] {
  const found: Sensitive[] = [];
  for (const input of inputs) {
    const lost: string[] = [];
    const gained: string[] = [];
    for (const { style, binding } of ranked) if (tight(binding, input, false)) lost.push(style);
    for (const { style, binding, because } of rejected) if (tight(binding, input, true) && onlyStop(because)) gained.push(style);
    if (lost.length + gained.length > 0) found.push({ input, lost, gained });
  }
  return found;
}
