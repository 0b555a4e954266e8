import type { Kind } from "@ringwright/core/units";
import { useId } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import { QuantityInput } from "./quantity-input.tsx";
import { draftOf, typingOf } from "./typing.ts";

/**
 * A labelled number with its unit. Every keystroke is kept as a draft, which
 * `readTyping(typingOf(drafts.text(draft)), kind, input)` then reads.
 */
export function QuantityField({
  draft,
  kind,
  label,
  hint,
  wrong,
  first = false,
  onEnter,
}: {
  readonly draft: string;
  readonly kind: Kind;
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong with what stands there, in words. */
  readonly wrong?: string | undefined;
  readonly first?: boolean;
  readonly onEnter?: (() => void) | undefined;
}) {
  const { drafts } = useWorkshop();
  const id = useId();
  const describedBy = [hint === undefined ? "" : `${id}-hint`, wrong === undefined ? "" : `${id}-wrong`].join(" ").trim();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {hint === undefined ? null : (
        <span class="quiet" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {wrong === undefined ? null : (
        <span class="attention" id={`${id}-wrong`} role="alert">
          {wrong}
        </span>
      )}
      <QuantityInput
        id={id}
        typing={typingOf(drafts.text(draft))}
        kind={kind}
        describedBy={describedBy || undefined}
        wrong={wrong !== undefined}
        first={first}
        onType={(typing) => void drafts.put(draft, draftOf(typing))}
        onEnter={onEnter}
      />
    </div>
  );
}
