import type { Entry } from "@ringwright/logbook";
import { useState } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import { Dialog } from "../../parts/dialog.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { type Around, entryInWords } from "./entry-in-words.ts";

/** Crosses an entry out, with a why. */
export function CrossOut({ entry, around, onClose }: { readonly entry: Entry; readonly around: Around; readonly onClose: () => void }) {
  const { words } = around;
  const { kept, drafts } = useWorkshop();
  const [asked, setAsked] = useState(false);
  const [fault, setFault] = useState<string>();
  const draft = `box/${entry.box}/logbook/cross/${entry.id}`;
  const why = drafts.text(draft)?.trim() ?? "";
  const { what, value } = entryInWords(entry, around);
  const cross = async () => {
    if (why === "") return setAsked(true);
    try {
      await kept.write("crossed-out", entry.box, { entry: entry.id, why });
    } catch (error) {
      return setFault(error instanceof Error ? error.message : String(error));
    }
    await drafts.drop(draft);
    return onClose();
  };
  return (
    <Dialog title={words("entry-cross-out")} onClose={onClose}>
      <p>
        {what} <span class="measured">{value}</span>
      </p>
      <p class="quiet">{words("entry-cross-out-hint")}</p>
      <TextField
        draft={draft}
        label={words("entry-cross-why")}
        missing={asked && why === "" ? words("entry-cross-why-missing") : undefined}
      />
      {fault === undefined ? null : (
        <p class="chalk" role="alert">
          {words("app-cannot-keep", { why: fault })}
        </p>
      )}
      <div class="bar">
        <button type="button" class="primary" onClick={() => void cross()}>
          {words("entry-cross-out")}
        </button>
      </div>
    </Dialog>
  );
}
