import { unitText } from "@ringwright/core/units";
import type { ComponentChildren } from "preact";
import { useWords } from "../words.ts";
import { keypadField } from "./focus.ts";
import { type Key, pressed, sixteenths } from "./keys.ts";
import { mayBeNegative } from "./typing.ts";

/** Presses a key into the field that the keypad writes into. */
function press(key: Key): void {
  const field = keypadField.peek();
  if (!field) return;
  if (key.does === "unit") {
    field.changeUnit?.();
    return;
  }
  const { element } = field;
  const touched = document.activeElement === element;
  const end = element.value.length;
  const from = touched ? (element.selectionStart ?? end) : end;
  const to = touched ? (element.selectionEnd ?? end) : end;
  const now = pressed({ text: element.value, from, to }, key);
  if (!touched) element.focus({ preventScroll: true });
  element.value = now.text;
  element.setSelectionRange(now.from, now.to);
  field.type(now.text);
}

/**
 * The keys for a measurement: digits, both decimal marks, stroke and space for
 * fractions, minus where something can be below nought, and sixteenths beside
 * inches. It never takes the focus from the field; whatever it writes, a
 * keyboard writes too.
 */
export function Keypad() {
  const words = useWords();
  const field = keypadField.value;
  const kind = field?.kind ?? "length";
  const write = (text: string): Key => ({ does: "write", text });
  const whole = kind === "count";
  const plain = kind === "count" || kind === "number";
  return (
    <fieldset class="keypad" aria-label={words("quantity-keypad")}>
      {field?.unit === "in" ? (
        <div class="sixteenths">
          {sixteenths.map((text) => (
            <KeyButton key={text} does={{ does: "fraction", text }}>
              {text}
            </KeyButton>
          ))}
        </div>
      ) : null}
      <div class="digits">
        {["7", "8", "9", "4", "5", "6", "1", "2", "3", whole ? "" : ",", "0", whole ? "" : "."].map((text, place) =>
          text === "" ? (
            <span key={place} />
          ) : (
            <KeyButton key={place} does={write(text)}>
              {text}
            </KeyButton>
          ),
        )}
      </div>
      <div class="beside-digits">
        <KeyButton does={{ does: "rub-out" }} name={words("quantity-rub-out")}>
          <svg viewBox="0 0 26 18" width="26" height="18" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2">
            <path d="M8 1h17v16H8L1 9zM13 6l6 6M19 6l-6 6" />
          </svg>
        </KeyButton>
        {plain ? null : (
          <>
            <KeyButton does={write("/")}>/</KeyButton>
            <KeyButton does={write(" ")} name={words("quantity-space")}>
              <svg viewBox="0 0 26 18" width="26" height="18" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2">
                <path d="M2 7v7h22V7" />
              </svg>
            </KeyButton>
          </>
        )}
        {!plain && mayBeNegative(kind) ? (
          <KeyButton does={write("-")} name={words("quantity-minus")}>
            −
          </KeyButton>
        ) : field?.changeUnit ? (
          <KeyButton does={{ does: "unit" }} name={words("quantity-other-unit", { unit: unitText(field.unit) })}>
            {unitText(field.unit)}
          </KeyButton>
        ) : null}
      </div>
    </fieldset>
  );
}

/** A key is out of the tab order: everything it writes stands on a keyboard. Touch and screen readers reach it. */
function KeyButton({ does, name, children }: { readonly does: Key; readonly name?: string; readonly children: ComponentChildren }) {
  return (
    <button
      type="button"
      class="key"
      tabIndex={-1}
      aria-label={name}
      onPointerDown={(event) => event.preventDefault()}
      onClick={() => press(does)}
    >
      {children}
    </button>
  );
}
