import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Drafts } from "../kept/drafts.ts";
import type { Kept } from "../kept/kept.ts";
import type { Preferences } from "./preferences.ts";

/** What every screen works with: the logbook on this device, what was typed, and how the reader likes it shown. */
export interface Workshop {
  readonly kept: Kept;
  readonly drafts: Drafts;
  readonly preferences: Preferences;
}

const context = createContext<Workshop | undefined>(undefined);
export const WorkshopProvider = context.Provider;

export function useWorkshop(): Workshop {
  const workshop = useContext(context);
  if (!workshop) throw new Error("drawn outside of the workshop");
  return workshop;
}
