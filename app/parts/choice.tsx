/**
 * One of a few answers, each a large button to tap. The first tap chooses;
 * nothing is chosen beforehand. `null` is "don't know", which is an answer.
 */
export function Choice<Value extends string | null>({
  legend,
  hint,
  options,
  chosen,
  onChoose,
  missing,
}: {
  readonly legend: string;
  readonly hint?: string;
  readonly options: readonly { readonly value: Value; readonly says: string; readonly note?: string }[];
  /** `undefined`: not answered yet. */
  readonly chosen: Value | undefined;
  readonly onChoose: (value: Value) => void;
  /** What to say when it has to be answered and was not. */
  readonly missing?: string | undefined;
}) {
  const name = legend.replace(/\W+/gu, "-");
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      {hint === undefined ? null : <p class="quiet">{hint}</p>}
      {missing === undefined ? null : (
        <p class="attention" role="alert">
          {missing}
        </p>
      )}
      <div class="options">
        {options.map(({ value, says, note }) => (
          <label key={String(value)} class="option">
            <input type="radio" name={name} checked={chosen === value} onChange={() => onChoose(value)} />
            <span>
              {says}
              {note === undefined ? null : <small>{note}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
