import type { Kind } from "@ringwright/core/units";
import { useEffect, useLayoutEffect, useRef } from "preact/hooks";
import { useWorkshop } from "../../frame/workshop.ts";
import { keypadField } from "./focus.ts";

/** The bare field for a number: its own keypad writes into it, and any keyboard does. */
export function NumberInput({
  id,
  text,
  kind,
  unit,
  name,
  describedBy,
  wrong,
  first = false,
  onType,
  onEnter,
  onLeave,
  onUnit,
}: {
  readonly id: string;
  readonly text: string;
  readonly kind: Kind | "count" | "number";
  readonly unit: string;
  /** Where no label stands beside it. */
  readonly name?: string | undefined;
  readonly describedBy?: string | undefined;
  readonly wrong: boolean;
  /** The keypad writes here before any field has been touched. */
  readonly first?: boolean;
  readonly onType: (text: string) => void;
  readonly onEnter?: (() => void) | undefined;
  readonly onLeave?: (() => void) | undefined;
  readonly onUnit?: (() => void) | undefined;
}) {
  const { preferences } = useWorkshop();
  const input = useRef<HTMLInputElement>(null);
  const claim = () => {
    const element = input.current;
    if (element) keypadField.value = { element, kind, unit, type: onType, ...(onUnit ? { changeUnit: onUnit } : {}) };
  };
  // The keypad always writes with what the field was last drawn with.
  useLayoutEffect(() => {
    const now = keypadField.peek()?.element;
    if (now === input.current || (first && (now === undefined || !now.isConnected))) claim();
  });
  useEffect(
    () => () => {
      if (keypadField.peek()?.element === input.current) keypadField.value = undefined;
    },
    [],
  );
  return (
    <input
      ref={input}
      id={id}
      class="number"
      type="text"
      inputMode={preferences.keys.value === "own" ? "none" : "text"}
      enterkeyhint="next"
      autoComplete="off"
      autoCorrect="off"
      spellcheck={false}
      maxLength={60}
      value={text}
      aria-label={name}
      aria-describedby={describedBy}
      aria-invalid={wrong}
      onFocus={claim}
      onBlur={onLeave}
      onInput={({ currentTarget }) => onType(currentTarget.value)}
      onKeyDown={(event) => {
        if (event.key !== "Enter" || !onEnter) return;
        event.preventDefault();
        onEnter();
      }}
    />
  );
}
