import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { isSettled } from "./set-choices.ts";
import type { useChanges } from "./use-changes.ts";

/** Every stock size about the gap, how likely it is the nearest and what to do with it; a tap takes it. */
export function StockChoice({
  box,
  plan,
  changes,
}: {
  readonly box: Box;
  readonly plan: Plan;
  readonly changes: ReturnType<typeof useChanges>;
}) {
  const words = useWords();
  const found = answerOf(plan.box.section);
  if (!found) return null;
  const settled = isSettled(box.state, "set.section");
  return (
    <fieldset class="stock">
      <legend>{words("rings-step-stock")}</legend>
      <p class="quiet">{words("rings-step-stock-hint")}</p>
      {found.stock.map(({ size, label, probability, advice }) => (
        <label key={label} class="option">
          <input
            type="radio"
            name="stock"
            checked={plan.box.stock !== undefined && Math.abs(plan.box.stock - size) < 1e-9}
            onChange={() => changes.change([{ field: "set.section", value: { value: size, unit: "m", typed: label } }])}
          />
          <span class="worked">{label}</span>
          <span class="likely">
            <span class="likely-bar" aria-hidden="true">
              <span style={{ inlineSize: `${100 * probability}%` }} />
            </span>
            {words("rings-step-percent", { percent: Math.round(100 * probability) })}
          </span>
          <small>{words(advice)}</small>
        </label>
      ))}
      {found.advice.map((id) => (
        <p key={id}>{words(id)}</p>
      ))}
      {settled ? (
        <button type="button" class="workings" onClick={() => changes.change([{ field: "set.section", value: null }])}>
          {words("rings-step-by-plan")}
        </button>
      ) : null}
    </fieldset>
  );
}
