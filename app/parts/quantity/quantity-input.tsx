import { type Kind, unitText } from "@ringwright/core/units";
import { useWorkshop } from "../../frame/workshop.ts";
import { useWords } from "../words.ts";
import { NumberInput } from "./number-input.tsx";
import { otherUnit, type Typing, unitBeside } from "./typing.ts";

/**
 * A number with the unit beside it. An empty field shows the reader's unit;
 * once something is typed the unit stays with it, and a tap on the unit says
 * that the other one was meant.
 */
export function QuantityInput({
  typing,
  kind,
  onType,
  ...field
}: {
  readonly id: string;
  readonly typing: Typing;
  readonly kind: Kind;
  readonly name?: string | undefined;
  readonly describedBy?: string | undefined;
  readonly wrong: boolean;
  readonly first?: boolean;
  readonly onType: (typing: Typing) => void;
  readonly onEnter?: (() => void) | undefined;
  readonly onLeave?: (() => void) | undefined;
}) {
  const words = useWords();
  const { preferences } = useWorkshop();
  const unit = unitBeside(typing, kind, preferences.units.value);
  const other = otherUnit(unit, kind);
  const change = other === undefined ? undefined : () => onType({ text: typing.text, unit: other });
  const swap =
    typing.text === "" && other !== undefined
      ? () => void preferences.keepUnits(preferences.units.peek() === "metric" ? "inch" : "metric")
      : change;
  return (
    <span class="quantity">
      <NumberInput {...field} text={typing.text} kind={kind} unit={unit} onType={(text) => onType({ text, unit })} onUnit={swap} />
      {swap && other !== undefined ? (
        <button
          type="button"
          class="unit"
          aria-label={words("quantity-unit", { unit: unitText(unit), other: unitText(other) })}
          onPointerDown={(event) => event.preventDefault()}
          onClick={swap}
        >
          {unitText(unit)}
        </button>
      ) : (
        <span class="unit">{unitText(unit)}</span>
      )}
    </span>
  );
}
