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

/** Whether an element that is slow to draw has come into view, and had its turn after others that did. */
export function useTurn(element: RefObject<Element | null>): boolean {
  const [come, setCome] = useState(false);
  useEffect(() => {
    if (!element.current) return undefined;
    const turn = () => setCome(true);
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
  }, []);
  return come;
}
