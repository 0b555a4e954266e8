import { useWords } from "./words.ts";

/** A count by two large buttons. Nothing stands there until it was touched: none is an answer too. */
export function Counter({
  legend,
  count,
  missing,
  onCount,
}: {
  readonly legend: string;
  readonly count: number | undefined;
  readonly missing?: string | undefined;
  readonly onCount: (count: number) => void;
}) {
  const words = useWords();
  return (
    <fieldset class="counter">
      <legend>{legend}</legend>
      {missing === undefined ? null : (
        <p class="attention" role="alert">
          {missing}
        </p>
      )}
      <div class="count">
        <button type="button" class="key" aria-label={words("fitting-less")} onClick={() => onCount(Math.max(0, (count ?? 0) - 1))}>
          −
        </button>
        <output class="measured" aria-live="polite">
          {count ?? "–"}
        </output>
        <button type="button" class="key" aria-label={words("fitting-more")} onClick={() => onCount(Math.min(99, (count ?? 0) + 1))}>
          +
        </button>
      </div>
    </fieldset>
  );
}
