import { type ComponentType, h } from "preact";
import { useEffect, useState } from "preact/hooks";
import { loadRest } from "../facts/facts.ts";
import { useWords } from "../parts/words.ts";

/** A screen that comes when it is first gone to, with all facts and words. */
export function later<Given extends object>(load: () => Promise<ComponentType<Given>>): ComponentType<Given> {
  return partLater(() => Promise.all([load(), loadRest()]).then(([screen]) => screen));
}

/**
 * A part of a screen that comes when it is first shown, and makes do with the facts and words that stand.
 * Nothing stands in its place meanwhile; where it can't be brought, that is said, and it can be asked for again.
 */
export function partLater<Given extends object>(load: () => Promise<ComponentType<Given>>): ComponentType<Given> {
  let come: ComponentType<Given> | undefined;
  return function Later(given: Given) {
    const [, drawAgain] = useState(0);
    const [missing, setMissing] = useState(false);
    const bring = () => {
      setMissing(false);
      load().then(
        (screen) => {
          come = screen;
          drawAgain((times) => times + 1);
        },
        () => setMissing(true),
      );
    };
    useEffect(() => {
      if (!come) bring();
    }, []);
    if (come) return h(come, given);
    return missing ? <Missing onAgain={bring} /> : null;
  };
}

/** A piece of the app that this device has not got yet, and no signal to get it. */
function Missing({ onAgain }: { readonly onAgain: () => void }) {
  const words = useWords();
  return (
    <div role="alert">
      <p>{words("app-piece-missing")}</p>
      <button type="button" class="second" onClick={onAgain}>
        {words("app-retry")}
      </button>
    </div>
  );
}
