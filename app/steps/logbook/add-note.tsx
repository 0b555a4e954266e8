import { useState } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";

/** A note in one's own words. */
export function AddNote({ box }: { readonly box: Box }) {
  const words = useWords();
  const { kept, drafts } = useWorkshop();
  const draft = `box/${box.id}/logbook/note`;
  const text = drafts.text(draft)?.trim() ?? "";
  const [open, setOpen] = useState(text !== "");
  const [asked, setAsked] = useState(false);
  const [fault, setFault] = useState<string>();
  if (!open)
    return (
      <div class="bar">
        <button type="button" class="primary" onClick={() => setOpen(true)}>
          {words("entry-add-note")}
        </button>
      </div>
    );
  const keep = async () => {
    if (text === "") return setAsked(true);
    try {
      await kept.write("note", box.id, { text });
    } catch (error) {
      return setFault(error instanceof Error ? error.message : String(error));
    }
    await drafts.drop(draft);
    setAsked(false);
    return setOpen(false);
  };
  return (
    <form
      class="ask"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <TextField draft={draft} label={words("entry-note-label")} missing={asked && text === "" ? words("entry-note-missing") : undefined} />
      {fault === undefined ? null : (
        <p class="chalk" role="alert">
          {words("app-cannot-keep", { why: fault })}
        </p>
      )}
      <button type="submit" class="primary">
        {words("entry-keep-note")}
      </button>
    </form>
  );
}
