import type { Judge } from "./judge.ts";
import type { ConstraintId } from "./reason.ts";

/** An input that need only be a tenth wrong for the answer to change. */
export interface Sensitive {
  readonly input: "temperature" | "speed" | "pressure" | "pH";
  /** Styles that would then be stopped. */
  readonly lost: readonly string[];
  /** Styles that would then no longer be stopped. */
  readonly gained: readonly string[];
}

const inputs: Readonly<Partial<Record<ConstraintId, Sensitive["input"]>>> = {
  temperature: "temperature",
  cold: "temperature",
  speed: "speed",
  pressure: "pressure",
  ph: "pH",
};

/** Gathers, style by style, which inputs a tenth wrong would change who is in and who is out. */
export class Sensitivity {
  readonly #byInput = new Map<Sensitive["input"], { readonly lost: string[]; readonly gained: string[] }>();

  look(style: string, judge: Judge): void {
    if (judge.stops > 1) return;
    for (const constraint of judge.swings) {
      const input = inputs[constraint];
      // A single stop goes away only when it is this one; nothing is lost that is already stopped.
      if (input === undefined || (judge.stops === 1 && judge.firstStop?.constraint !== constraint)) continue;
      const found = this.#byInput.get(input) ?? { lost: [], gained: [] };
      this.#byInput.set(input, found);
      const list = judge.stops === 1 ? found.gained : found.lost;
      if (!list.includes(style)) list.push(style);
    }
  }

  found(): readonly Sensitive[] {
    return [...this.#byInput].map(([input, { lost, gained }]) => ({ input, lost, gained }));
  }
}
