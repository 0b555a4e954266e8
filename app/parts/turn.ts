import type { RefObject } from "preact";
import { useEffect, useState } from "preact/hooks";

const waiting: (() => void)[] = [];
let going = false;

/** The next in line, and a picture on the screen between one and the next: taps meanwhile are not kept waiting. */
function goOn(): void {
  const next = waiting.shift();
  going = next !== undefined;
  if (!next) return;
  next();
  requestAnimationFrame(() => setTimeout(goOn));
}

/**
 * What is slow to work out, worked out when its element has come into view and
 * others before it had their turn. Until then nothing, or what it was before
 * the inputs changed.
 */
export function useInTurn<Worked>(element: RefObject<Element | null>, work: () => Worked, inputs: readonly unknown[]): Worked | undefined {
  const [worked, setWorked] = useState<Worked>();
  useEffect(() => {
    if (!element.current) return undefined;
    const turn = () => {
      const now = work();
      setWorked(() => now);
    };
    const watcher = new IntersectionObserver((seen) => {
      if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
      watcher.disconnect();
      waiting.push(turn);
      if (!going) goOn();
    });
    watcher.observe(element.current);
    return () => {
      watcher.disconnect();
      const at = waiting.indexOf(turn);
      if (at >= 0) waiting.splice(at, 1);
    };
  }, inputs);
  return worked;
}
