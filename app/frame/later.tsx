import { type ComponentType, h } from "preact";
import { useEffect, useState } from "preact/hooks";
import { loadRest } from "../facts/facts.ts";

/** A screen that comes when it is first gone to, with all facts and words. */
export function later<Given extends object>(load: () => Promise<ComponentType<Given>>): ComponentType<Given> {
  return partLater(() => Promise.all([load(), loadRest()]).then(([screen]) => screen));
}

/**
 * A part of a screen that comes when it is first shown, and makes do with the facts and words that stand.
 * Nothing stands in its place meanwhile: it is on this device, or comes with one request.
 */
export function partLater<Given extends object>(load: () => Promise<ComponentType<Given>>): ComponentType<Given> {
  let come: ComponentType<Given> | undefined;
  return function Later(given: Given) {
    const [, drawAgain] = useState(0);
    useEffect(() => {
      if (come) return;
      void load().then((screen) => {
        come = screen;
        drawAgain((times) => times + 1);
      });
    }, []);
    return come ? h(come, given) : null;
  };
}
