import { formatQuantity, type Kind, type Kinds, type UnitSystem } from "@ringwright/core/units";
import type { Says, Shown } from "@ringwright/core/workings";
import { english, nameOf, sayIn } from "@ringwright/words";
import { facts } from "../facts/facts.ts";
import { useWorkshop } from "../frame/workshop.ts";

/** The reader's words and units. */
export interface Words {
  (id: string, values?: Readonly<Record<string, Shown>>): string;
  sentence(says: Says): string;
  called(id: string): string;
  value<K extends Kind>(
    kind: K,
    value: Kinds[K],
    as?: { readonly digits?: number; readonly decimals?: number; readonly unit?: string },
  ): string;
}

/** Words in English and the units of a system. */
export function wordsIn(system: UnitSystem): Words {
  const show = { catalogue: english, system };
  const words = (id: string, values: Readonly<Record<string, Shown>> = {}) => sayIn(show, { id, with: values });
  return Object.assign(words, {
    sentence: (says: Says) => sayIn(show, says),
    called: (id: string) => nameOf(id),
    value: <K extends Kind>(kind: K, value: Kinds[K], as = {}) => formatQuantity(kind, value, { system, ...as }),
  });
}

/** Words in the language and the units that the reader has set. */
export function useWords(): Words {
  // The rest of the words comes with the rest of the facts; what is on screen then says itself anew.
  void facts.value;
  return wordsIn(useWorkshop().preferences.units.value);
}
