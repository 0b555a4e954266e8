import type { Job } from "@ringwright/logbook";
import { now, rfc3339 } from "../../device/clock.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { capital } from "../../parts/capital.ts";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";
import { writtenBefore } from "./job.ts";

/** A line to fill in by hand. What was written into such a line before, or the time, is a tap away. */
export function Blank({
  blank,
  draft,
  job,
  missing,
}: {
  readonly blank: string;
  readonly draft: string;
  readonly job: Job | undefined;
  readonly missing: boolean;
}) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const name = words.called(blank);
  const taps =
    blank === "time"
      ? [{ says: words("fitting-now"), text: () => rfc3339(now()).slice(11, 16) }]
      : writtenBefore(job, blank).map((text) => ({ says: text, text: () => text }));
  return (
    <div class="blank">
      <TextField draft={draft} label={capital(name)} missing={missing ? words("fitting-blank-empty") : undefined} />
      {(drafts.text(draft) ?? "") !== "" || taps.length === 0 ? null : (
        <div class="taps">
          {taps.map(({ says, text }) => (
            <button key={says} type="button" class="second" onClick={() => void drafts.put(draft, text())}>
              {says}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
