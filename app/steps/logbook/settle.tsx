import type { Bodies, EntryKind, Fact, FieldValue, Job } from "@ringwright/logbook";
import { useRef } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { capital } from "../../parts/capital.ts";
import { fieldName, fieldValue, foundValue } from "../../parts/field-value.ts";
import { timeText } from "../../parts/time-text.ts";
import { useWords } from "../../parts/words.ts";
import { stepName } from "./step-name.ts";

interface Side {
  readonly entry: string;
  readonly text: string;
  readonly at: string;
  readonly keep: () => Promise<unknown>;
}

/** What devices say differently about one fact, neither having seen the other. */
interface Quarrel {
  readonly id: string;
  readonly about: string;
  readonly sides: readonly Side[];
}

/** Every disagreement side by side. A tap writes what is right as a new entry, which comes after all of them. */
export function Settle({ box }: { readonly box: Box }) {
  const words = useWords();
  const { kept } = useWorkshop();
  const busy = useRef(false);
  const { state, id: box_ } = box;
  const kindOf = (entry: string) => state.entries.find((shown) => shown.entry.id === entry)?.entry.kind as EntryKind;
  const fields = [...state.fields].filter(quarrels).map(
    ([field, fact]): Quarrel => ({
      id: field,
      about: fieldName(field, words),
      sides: fact.standing.map(({ value, entry, at }) => ({
        entry,
        at,
        text: fieldValue(field, value, words),
        keep: () => kept.write(kindOf(entry) as "measured", box_, { field, value: value as FieldValue }),
      })),
    }),
  );
  const limits = [...state.limits].filter(quarrels).map(
    ([item, fact]): Quarrel => ({
      id: `limit ${item}`,
      about: words.called(item),
      sides: fact.standing.map(({ value, entry, at }) => ({
        entry,
        at,
        text: value.value === null ? words("entry-no-limit") : foundValue(value.value, words),
        keep: () => kept.write("limit-set", box_, value),
      })),
    }),
  );
  const steps = state.jobs.flatMap((job: Job) =>
    [...job.steps].filter(quarrels).map(
      ([step, fact]): Quarrel => ({
        id: `${job.id} ${step}`,
        about: stepName(step, new Map(), words),
        sides: fact.standing.map(({ value, entry, at }) => ({
          entry,
          at,
          text: stepText(value),
          keep: () => kept.write("fit-step", box_, value),
        })),
      }),
    ),
  );
  const all = [...fields, ...limits, ...steps];
  if (all.length === 0) return null;
  const settle = async (side: Side) => {
    if (busy.current) return;
    busy.current = true;
    await side.keep().finally(() => {
      busy.current = false;
    });
  };
  return (
    <section class="quarrels">
      <h2 class="attention">{words("entry-settle")}</h2>
      <p class="quiet">{words("entry-settle-hint")}</p>
      {all.map(({ id, about, sides }) => (
        <div key={id} class="quarrel">
          <h3>{capital(about)}</h3>
          <div class="sides">
            {sides.map((side) => (
              <div key={side.entry}>
                <p class="measured">{side.text}</p>
                <p class="quiet">{timeText(side.at)}</p>
                <button
                  type="button"
                  class="second"
                  aria-label={`${words("entry-this-one")}: ${about} ${side.text}`}
                  onClick={() => void settle(side)}
                >
                  {words("entry-this-one")}
                </button>
              </div>
            ))}
          </div>
        </div>
      ))}
    </section>
  );

  function stepText({ found, cannot }: Bodies["fit-step"]): string {
    return cannot === undefined ? foundValue(found, words) : words("entry-not-done", { typed: words.called(cannot) });
  }
}

function quarrels<Value>([, fact]: readonly [string, Fact<Value>]): boolean {
  return fact.standing.length > 1;
}
