import type { Length, Stress } from "../units/index.ts";
import { outside, type Range, type Refused, within } from "../workings/index.ts";

/** One thing in the box, counted from the gland: a ring, or a lantern ring, spacer or bush that the walls do not grip. */
export interface Part {
  /** Along the shaft. */
  readonly height: Length;
  /** Radial over axial stress, K; 0 for what does not press on the walls. */
  readonly ratio: number;
  /** Coefficient of friction on the shaft. */
  readonly frictionShaft: number;
  /** Coefficient of friction on the bore. */
  readonly frictionBore: number;
}

/** A part that also gives under load. */
export interface ElasticPart extends Part {
  /** Axial secant modulus at this load; left out for what does not give. */
  readonly modulus?: Stress;
}

/** A stack in a box. */
export interface Stack<P extends Part = Part> {
  readonly shaft: Length;
  readonly bore: Length;
  /** From gland to throat. */
  readonly parts: readonly P[];
  /** Whether the shaft turns, so that its friction points around and not along. */
  readonly turning?: boolean;
}

const heights: Range = { min: Number.MIN_VALUE, max: 2 };
const ratios: Range = { min: 0, max: 1 };
const frictions: Range = { min: 0, max: 1 };

/** Refuses the first part that is no part; names are only put together when one is. */
export function noStack(parts: readonly Part[]): Refused | undefined {
  if (parts.length < 1 || parts.length > 100) return outside([["parts", parts.length, { min: 1, max: 100 }, "1"]]);
  let last: Part | undefined;
  for (let i = 0; i < parts.length; i++) {
    const part = parts[i];
    // Rings of one set are as a rule the same part, looked at once.
    if (!part || part === last) continue;
    last = part;
    if (
      within(heights, part.height) &&
      within(ratios, part.ratio) &&
      within(frictions, part.frictionShaft) &&
      within(frictions, part.frictionBore)
    )
      continue;
    return outside([
      [`parts[${i}].height`, part.height, heights, "m"],
      [`parts[${i}].ratio`, part.ratio, ratios, "1"],
      [`parts[${i}].frictionShaft`, part.frictionShaft, frictions, "1"],
      [`parts[${i}].frictionBore`, part.frictionBore, frictions, "1"],
    ]);
  }
  return undefined;
}
