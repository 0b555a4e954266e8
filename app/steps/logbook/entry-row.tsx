import type { Bodies, Entry, Shown } from "@ringwright/logbook";
import { useWorkshop } from "../../frame/workshop.ts";
import { capital } from "../../parts/capital.ts";
import { timeText } from "../../parts/time-text.ts";
import { type Around, entryInWords } from "./entry-in-words.ts";

/** One entry: when, what, the value as it was typed, who; struck through when it was crossed out. */
export function EntryRow({
  shown: { entry, crossedOutBy, newer },
  around,
  onCross,
}: {
  readonly shown: Shown;
  readonly around: Around;
  readonly onCross: (entry: Entry) => void;
}) {
  const { words } = around;
  const { kind, what, value, beneath } = entryInWords(entry, around);
  const by = useName(entry.by);
  const crossing = crossedOutBy === undefined ? undefined : (around.other(crossedOutBy)?.body as Bodies["crossed-out"] | undefined);
  const { happened, device } = entry.at;
  const when =
    happened === undefined ? timeText(device) : words("entry-paper-time", { typed: timeText(happened), given: timeText(device) });
  const said = (
    <>
      {what === kind ? null : <span class="what">{capital(what)}</span>}
      {value === "" ? null : <span class={entry.kind === "note" ? "own-words" : "measured"}>{value}</span>}
      {beneath.map((line) => (
        <span key={line} class="quiet beneath">
          {line}
        </span>
      ))}
    </>
  );
  return (
    <li class={crossedOutBy === undefined ? undefined : "crossed"}>
      <p class="quiet entry-head">
        <span>{kind}</span>
        <span>
          <time dateTime={happened ?? device}>{when}</time> · {by}
        </span>
      </p>
      <div class="entry-said">{crossedOutBy === undefined ? said : <s>{said}</s>}</div>
      {crossedOutBy === undefined ? null : (
        <p class="attention">{words("entry-crossed-by", { typed: crossing?.why ?? words("entry-crossed-no-why") })}</p>
      )}
      {crossedOutBy !== undefined || newer || entry.kind === "crossed-out" ? null : (
        <button
          type="button"
          class="workings cross"
          aria-label={`${words("entry-cross-out")}: ${what} ${value}`}
          onClick={() => onCross(entry)}
        >
          {words("entry-cross-out")}
        </button>
      )}
    </li>
  );

  /** The name behind an opaque id, where this device has heard it. */
  function useName(id: string): string {
    const { kept } = useWorkshop();
    return kept.people.value.get(id) ?? words(id === "owner" || entry.device === kept.device ? "entry-nobody" : "entry-someone");
  }
}
