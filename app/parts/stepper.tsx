import { useWords } from "./words.ts";

/** A count or a length set by single taps: one less, one more. */
export function Stepper({
  label,
  value,
  settled,
  onLess,
  onMore,
}: {
  readonly label: string;
  readonly value: string;
  /** Whether a person settled it, rather than the plan. */
  readonly settled: boolean;
  /** None where it can't go further that way. */
  readonly onLess: (() => void) | undefined;
  readonly onMore: (() => void) | undefined;
}) {
  const words = useWords();
  return (
    <fieldset class="stepper">
      <legend>{label}</legend>
      <button type="button" class="second" aria-disabled={!onLess} aria-label={words("rings-step-less", { what: label })} onClick={onLess}>
        −
      </button>
      <output class={settled ? "measured" : "worked"}>{value}</output>
      <button type="button" class="second" aria-disabled={!onMore} aria-label={words("rings-step-more", { what: label })} onClick={onMore}>
        +
      </button>
      {settled ? null : <span class="quiet">{words("rings-step-by-plan")}</span>}
    </fieldset>
  );
}
