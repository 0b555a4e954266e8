import type { Rejected } from "@ringwright/core/materials";
import { useRef, useState } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { go, onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";

/** Settles on a packing. One that does not pass can be settled on too: its reason stands above, and a why goes into the logbook. */
export function PackWithThis({
  box,
  style,
  rejected,
  taken,
}: {
  readonly box: Box;
  readonly style: string;
  readonly rejected: Rejected | undefined;
  readonly taken: boolean;
}) {
  const words = useWords();
  const { kept, drafts } = useWorkshop();
  const [asked, setAsked] = useState(false);
  const [fault, setFault] = useState<string>();
  const busy = useRef(false);
  const draft = `box/${box.id}/choose/why/${style}`;
  const why = drafts.text(draft)?.trim() ?? "";
  const take = async () => {
    if (rejected && why === "") return setAsked(true);
    if (busy.current) return;
    busy.current = true;
    try {
      await kept.write("rings-chosen", box.id, { field: "set.style", value: style });
      if (rejected) await kept.write("note", box.id, { text: words("choose-note", { style, given: why }) });
      await drafts.drop(draft);
      go(onBox(box.id, "choose"));
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    } finally {
      busy.current = false;
    }
  };
  if (taken)
    return (
      <div class="bar">
        <p>{words("choose-is-taken")}</p>
        <Link to={onBox(box.id, "rings")} class="primary">
          {words("choose-next")}
        </Link>
      </div>
    );
  return (
    <div class="pack-with">
      {rejected ? (
        <>
          <div class="chalk">
            {rejected.because
              .filter(({ kind }) => kind === "stop")
              .map(({ says }) => (
                <p key={words.sentence(says)}>{words.sentence(says)}</p>
              ))}
            <p>{words("choose-against")}</p>
          </div>
          <TextField draft={draft} label={words("choose-why")} missing={asked && why === "" ? words("choose-why-missing") : undefined} />
        </>
      ) : null}
      {fault === undefined ? null : (
        <p class="chalk" role="alert">
          {words("app-cannot-keep", { why: fault })}
        </p>
      )}
      <button type="button" class="primary" onClick={() => void take()}>
        {words("choose-take")}
      </button>
    </div>
  );
}
