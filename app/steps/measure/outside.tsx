import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { CardButton } from "./coming.tsx";
import { happenedAt, happenedKey } from "./keep.ts";
import { known } from "./question.ts";

/** Whether ordinary devices have to be taken to stay outside: what is not known counts as what would hurt. */
function staysOutside({ question }: Box): boolean {
  return question.zone !== "ordinary" || known(question, "hazards.flammable") === "yes";
}

/** Where ordinary devices may not go, the card comes before everything else, and readings are entered afterwards. */
export function Outside({ box }: { readonly box: Box }) {
  const words = useWords();
  if (!staysOutside(box)) return null;
  return (
    <aside class="outside">
      <p class="chalk">{words("measure-devices-outside")}</p>
      <CardButton box={box} />
    </aside>
  );
}

/** Says that what is kept now carries a time from paper, so that it is not forgotten there. */
export function PaperTime({ box }: { readonly box: Box }) {
  const words = useWords();
  const at = useWorkshop().drafts.text(happenedKey(box.id));
  if (happenedAt(at) === undefined) return null;
  return (
    <span>
      {words("measure-on-paper-at")} <span class="measured">{at?.replace("T", " ")}</span>
    </span>
  );
}

/** When a reading was taken, where it was written on paper first. Both times are kept. */
export function OnPaper({ box }: { readonly box: Box }) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const key = happenedKey(box.id);
  const at = drafts.text(key) ?? "";
  return (
    <details class="on-paper" open={at !== ""}>
      <summary>{words("measure-on-paper")}</summary>
      <label class="field">
        <span>{words("measure-on-paper-at")}</span>
        <span class="quiet">{words("measure-on-paper-hint")}</span>
        <input
          type="datetime-local"
          value={at}
          onInput={({ currentTarget }) => void (currentTarget.value === "" ? drafts.drop(key) : drafts.put(key, currentTarget.value))}
        />
      </label>
      {at === "" ? null : (
        <button type="button" class="second" onClick={() => void drafts.drop(key)}>
          {words("measure-on-paper-now")}
        </button>
      )}
    </details>
  );
}
