import type { Paper } from "@ringwright/card";
import { useEffect, useState } from "preact/hooks";
import { loadRest } from "../facts/facts.ts";
import { useWorkshop } from "../frame/workshop.ts";
import { type Box, boxOf, planOf } from "../kept/box.ts";
import { Choice } from "./choice.tsx";
import { Dialog } from "./dialog.tsx";
import { useWords } from "./words.ts";

/** Offers the printed card of a box. What draws it comes when it is asked for; no server is needed. */
export function CardButton({ box, primary = false }: { readonly box: Box; readonly primary?: boolean }) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  if (planOf(box) === undefined) return null;
  return (
    <div class="card-offer">
      <button type="button" class={primary ? "primary" : "second"} onClick={() => setOpen(true)}>
        {words("print-card")}
      </button>
      {open ? <CardDialog box={box} onClose={() => setOpen(false)} /> : null}
    </div>
  );
}

type Making =
  | { readonly kind: "asked" }
  | { readonly kind: "drawing" }
  | { readonly kind: "ready"; readonly address: string; readonly file: string }
  | { readonly kind: "failed"; readonly why: string };

const papers: readonly Paper[] = ["a4", "letter"];

function CardDialog({ box, onClose }: { readonly box: Box; readonly onClose: () => void }) {
  const words = useWords();
  const workshop = useWorkshop();
  const [making, setMaking] = useState<Making>({ kind: "asked" });
  const { preferences } = workshop;
  const address = making.kind === "ready" ? making.address : undefined;
  useEffect(() => () => void (address === undefined ? undefined : URL.revokeObjectURL(address)), [address]);
  const make = async () => {
    setMaking({ kind: "drawing" });
    try {
      const [{ issueCard }] = await Promise.all([import("./card/issue-card.ts"), loadRest()]);
      // Planned with all facts, which may have come just now.
      setMaking({ kind: "ready", ...(await issueCard(boxOf(box.id, workshop.kept.state(box.id)), workshop)) });
    } catch (error) {
      setMaking({ kind: "failed", why: error instanceof Error ? error.message : String(error) });
    }
  };
  return (
    <Dialog title={words("print-card")} onClose={onClose}>
      <p class="quiet">{words("print-card-long")}</p>
      <Choice
        legend={words("print-paper")}
        options={papers.map((value) => ({ value, says: words(`print-${value}`) }))}
        chosen={preferences.paper.value}
        onChoose={(value) => {
          setMaking({ kind: "asked" });
          void preferences.keepPaper(value);
        }}
      />
      <p role="status">
        {making.kind === "drawing" ? words("print-making") : making.kind === "ready" ? words("print-ready") : null}
        {making.kind === "failed" ? <span class="attention">{words("print-failed", { typed: making.why })}</span> : null}
      </p>
      <div class="bar">
        {making.kind === "ready" ? (
          <>
            <a class="primary" href={making.address} target="_blank" rel="noopener">
              {words("print-open")}
            </a>
            <a class="second" href={making.address} download={making.file}>
              {words("print-save")}
            </a>
          </>
        ) : (
          <button type="button" class="primary" onClick={() => making.kind !== "drawing" && void make()}>
            {words("print-make")}
          </button>
        )}
      </div>
    </Dialog>
  );
}
