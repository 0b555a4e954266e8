import type { Material, MaterialLine } from "@ringwright/core/materials";
import { useEffect, useState } from "preact/hooks";
import { Dialog } from "../../parts/dialog.tsx";
import { useWords } from "../../parts/words.ts";
import { lineInWords } from "./line-in-words.ts";

/** Everything known of a packing, line by line; what is not known is named too. */
export function Facts({ of: { lines, parts, notStated } }: { readonly of: Material }) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  const told = lines.filter(({ property }) => property !== "made").map((line) => lineInWords(line, words));
  const made = parts.map((alternatives) => alternatives.map((one) => words.called(one)).join(` ${words("choose-or")} `)).join(", ");
  return (
    <section class="told">
      <h3>{words("choose-facts")}</h3>
      <dl class="rows">
        {made === "" ? null : (
          <div>
            <dt>{words.called("material-made")}</dt>
            <dd>
              {made}
              {notStated.map((part) => (
                <span key={part} class="quiet beneath">
                  {words(`${part}-not-stated`) === `${part}-not-stated` ? words(`${part}-not-said`) : words(`${part}-not-stated`)}
                </span>
              ))}
            </dd>
          </div>
        )}
        {told
          .filter(({ value, notes }) => value !== "" || notes.length > 0)
          .map(({ label, value, notes, remembered }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>
                <span class="worked">{value}</span>
                {remembered ? <span class="note quiet"> {words("plan-memory")}</span> : null}
                {notes.map((note) => (
                  <span key={note} class="quiet beneath">
                    {note}
                  </span>
                ))}
              </dd>
            </div>
          ))}
      </dl>
      <p class="quiet">
        {words("choose-unknown")}:{" "}
        {told
          .filter(({ value, notes }) => value === "" && notes.length === 0)
          .map(({ label }) => label)
          .join(", ")}
      </p>
      <button type="button" class="workings" onClick={() => setOpen(true)}>
        {words("choose-sources")}
      </button>
      {open ? <Sources lines={lines} onClose={() => setOpen(false)} /> : null}
    </section>
  );
}

/** Where each line comes from and how it was seen. The list of sources comes when it is first asked for. */
function Sources({ lines, onClose }: { readonly lines: readonly MaterialLine[]; readonly onClose: () => void }) {
  const words = useWords();
  const [titles, setTitles] = useState<(source: string, seen?: string) => string>();
  useEffect(() => {
    void import("@ringwright/core/sources").then(({ sources }) =>
      setTitles(() => (source: string, seen?: string) => {
        const known = sources[source as keyof typeof sources];
        const how = seen ?? known.seen;
        return how === "derived" || how === "practice" ? known.title : `${known.title}, ${words(`seen-${how}`)}`;
      }),
    );
  }, []);
  return (
    <Dialog title={words("choose-sources")} onClose={onClose}>
      <dl class="rows sources">
        {lines
          .filter(({ line }) => line.origin.length > 0)
          .map(({ property, line }) => (
            <div key={property}>
              <dt>{words.called(`material-${property}`)}</dt>
              <dd>
                {line.origin.map(({ source, says, seen }) => (
                  <span key={`${source} ${says ?? ""}`} class="beneath">
                    {titles ? titles(source, seen) : ""}
                    {says === undefined ? null : <span class="quiet"> · {says}</span>}
                  </span>
                ))}
              </dd>
            </div>
          ))}
      </dl>
    </Dialog>
  );
}
