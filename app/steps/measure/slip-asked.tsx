import { useEffect, useRef } from "preact/hooks";
import type { Typing } from "../../parts/quantity/typing.ts";
import { useWords } from "../../parts/words.ts";
import { shown } from "./readings.tsx";
import type { Slip } from "./slips.ts";

/** A number that looks mistyped, asked about: one tap says that it was meant, one puts right what was not. */
export function SlipAsked({
  slip,
  onMeant,
  onInstead,
}: {
  readonly slip: Slip;
  readonly onMeant: () => void;
  readonly onInstead: (typing: Typing) => void;
}) {
  const words = useWords();
  const first = useRef<HTMLDivElement>(null);
  useEffect(() => first.current?.focus(), [slip.given]);
  return (
    <div class="slip chalk" role="alertdialog" aria-label={words.sentence(slip.says)} tabIndex={-1} ref={first}>
      <p>{words.sentence(slip.says)}</p>
      <div class="answers">
        {slip.meant.map((typing) => (
          <button key={shown(typing)} type="button" class="second" onClick={() => onInstead(typing)}>
            {words("measure-no-it-is", { value: shown(typing) })}
          </button>
        ))}
        <button type="button" class="second" onClick={onMeant}>
          {words("measure-yes-meant", { value: slip.given })}
        </button>
      </div>
    </div>
  );
}
