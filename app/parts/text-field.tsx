import { useId } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";

/** A line of text. Every keystroke is kept as a draft. */
export function TextField({
  draft,
  label,
  hint,
  missing,
  purpose = "off",
}: {
  readonly draft: string;
  readonly label: string;
  readonly hint?: string;
  readonly missing?: string | undefined;
  /** What a device that knows its owner may fill in. */
  readonly purpose?: "off" | "name";
}) {
  const { drafts } = useWorkshop();
  const id = useId();
  const text = drafts.text(draft) ?? "";
  return (
    <p class="field">
      <label for={id}>{label}</label>
      {hint === undefined ? null : (
        <span class="quiet" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {missing === undefined ? null : (
        <span class="attention" id={`${id}-missing`} role="alert">
          {missing}
        </span>
      )}
      <input
        id={id}
        type="text"
        value={text}
        maxLength={200}
        autoComplete={purpose}
        aria-describedby={
          [hint === undefined ? "" : `${id}-hint`, missing === undefined ? "" : `${id}-missing`].join(" ").trim() || undefined
        }
        aria-invalid={missing !== undefined}
        onInput={({ currentTarget }) => void drafts.put(draft, currentTarget.value)}
      />
    </p>
  );
}
