import { useId } from "preact/hooks";
import { now, rfc3339 } from "../../device/clock.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { useWords } from "../../parts/words.ts";

/** For what was written on the card at the box and is entered afterwards: when it was done. */
export function PaperTime({ prefix, openFirst }: { readonly prefix: string; readonly openFirst: boolean }) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const id = useId();
  const paper = drafts.text(`${prefix}paper`);
  const latest = rfc3339(now()).slice(0, 16);
  return (
    <details class="paper-time" open={openFirst || paper !== undefined}>
      <summary>{words("fitting-paper")}</summary>
      <p class="quiet">{words("fitting-paper-hint")}</p>
      <p class="field">
        <label for={id}>{words("fitting-paper-when")}</label>
        <input
          id={id}
          type="datetime-local"
          max={latest}
          value={paper ?? ""}
          onInput={({ currentTarget: { value } }) =>
            void (value === "" ? drafts.drop(`${prefix}paper`) : drafts.put(`${prefix}paper`, value))
          }
        />
      </p>
      {paper === undefined ? null : (
        <button type="button" class="second" onClick={() => void drafts.drop(`${prefix}paper`)}>
          {words("fitting-paper-now")}
        </button>
      )}
    </details>
  );
}
