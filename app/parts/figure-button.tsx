import type { Step } from "@ringwright/core/workings";
import { useState } from "preact/hooks";
import { useWords } from "./words.ts";
import { Workings } from "./workings.tsx";

/** A worked-out figure: tap it for its workings. */
export function FigureButton({ value, part, steps }: { readonly value: string; readonly part: string; readonly steps: readonly Step[] }) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        class="figure worked"
        aria-haspopup="dialog"
        aria-label={words("app-figure-workings", { value })}
        onClick={() => setOpen(true)}
      >
        {value}
      </button>
      {open ? <Workings part={part} steps={steps} onClose={() => setOpen(false)} /> : null}
    </>
  );
}
