import type { UnitSystem } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import type { Typesetter } from "./pdf/typesetter.ts";

/** What every part of the card is made with. */
export interface Setting {
  readonly type: Typesetter;
  readonly system: UnitSystem;
  readonly words: (id: string, values?: NonNullable<Says["with"]>) => string;
}

/**
 * The part of a sheet that A4 and Letter have in common less 12 mm all round,
 * so that both come out page by page the same.
 */
export const area = { width: 186, height: 255 } as const;

export const papers = { a4: [210, 297], letter: [215.9, 279.4] } as const satisfies Readonly<Record<string, readonly [number, number]>>;
export type Paper = keyof typeof papers;
