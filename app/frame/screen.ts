import type { Box } from "../kept/box.ts";

/** What a screen about one box is given: the box, and what follows the step in the address. */
export interface OfBox {
  readonly box: Box;
  readonly rest: readonly string[];
}
