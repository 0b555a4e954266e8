import { useState } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { before, type Change } from "./set-choices.ts";

/** Writes what a person settles about the set, and knows what stood there before. */
export function useChanges(box: Box) {
  const { kept } = useWorkshop();
  const [undo, setUndo] = useState<readonly Change[]>([]);
  const [fault, setFault] = useState<string>();
  const [said, setSaid] = useState(false);
  const write = async (changes: readonly Change[]) => {
    if (changes.length === 0) return;
    const was = before(box.state, changes);
    setSaid(false);
    try {
      for (const change of changes) await kept.write("rings-chosen", box.id, change);
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
      return;
    }
    setFault(undefined);
    setSaid(true);
    setUndo(was);
  };
  return { change: (changes: readonly Change[]) => void write(changes), undo, fault, said };
}
