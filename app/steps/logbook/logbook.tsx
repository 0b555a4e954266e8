import type { Entry } from "@ringwright/logbook";
import { useMemo, useState } from "preact/hooks";
import type { OfBox } from "../../frame/screen.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { useWords } from "../../parts/words.ts";
import { useSteps } from "../fit/fitting.ts";
import { AddNote } from "./add-note.tsx";
import { CrossOut } from "./cross-out.tsx";
import type { Around } from "./entry-in-words.ts";
import { EntryRow } from "./entry-row.tsx";
import { Settle } from "./settle.tsx";

/** How many entries are drawn before they are asked for. */
const page = 60;

/** Everything that happened to a box, newest first. Nothing is erased: what was wrong is crossed out and stays readable. */
export function Logbook({ box }: OfBox) {
  const words = useWords();
  const { preferences } = useWorkshop();
  const [count, setCount] = useState(page);
  const [crossing, setCrossing] = useState<Entry>();
  const steps = useSteps(box);
  const { state } = box;
  const system = preferences.units.value;
  const around = useMemo((): Around => {
    const known = new Map(state.entries.map(({ entry }) => [entry.id, entry]));
    const texts = new Map([...(steps?.texts ?? [])].map(([id, { text }]) => [id, text]));
    return { words, steps: texts, other: (id) => known.get(id) };
  }, [state, steps, system]);
  const newest = state.entries;
  return (
    <>
      <Settle box={box} />
      <AddNote box={box} />
      {newest.length === 0 ? <p>{words("entry-empty")}</p> : null}
      <h2 class="visually-hidden">{words("entry-list")}</h2>
      <ol class="entries">
        {newest.slice(0, count).map((shown) => (
          <EntryRow key={shown.entry.id} shown={shown} around={around} onCross={setCrossing} />
        ))}
      </ol>
      {newest.length > count ? (
        <button type="button" class="second" onClick={() => setCount(count + 4 * page)}>
          {words("entry-show-more", { count: newest.length - count })}
        </button>
      ) : null}
      {crossing ? <CrossOut entry={crossing} around={around} onClose={() => setCrossing(undefined)} /> : null}
    </>
  );
}
