import { signal } from "@preact/signals";
import type { Kind } from "@ringwright/core/units";

/** The field that the keypad writes into. */
export interface KeypadField {
  readonly element: HTMLInputElement;
  readonly kind: Kind | "count" | "number";
  /** Symbol of the unit that now stands beside it. */
  readonly unit: string;
  readonly type: (text: string) => void;
  /** Brings the other unit; none where there is no other. */
  readonly changeUnit?: () => void;
}

export const keypadField = signal<KeypadField | undefined>(undefined);
