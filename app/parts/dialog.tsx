import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";
import { useWords } from "./words.ts";

/** A sheet over the page, closed by its button, by Escape, or by a tap beside it; then the focus goes back where it was. */
export function Dialog({
  title,
  onClose,
  children,
}: {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}) {
  const words = useWords();
  const element = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    element.current?.showModal();
  }, []);
  return (
    <dialog ref={element} aria-labelledby={heading} closedby="any" onClose={onClose}>
      <div class="sheet">
        <div class="sheet-head">
          <h2 id={heading}>{title}</h2>
          <button type="button" class="second" onClick={() => element.current?.close()}>
            {words("app-close")}
          </button>
        </div>
        {children}
      </div>
    </dialog>
  );
}
