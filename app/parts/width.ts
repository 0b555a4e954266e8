import { inUnit, quantity } from "@ringwright/core/units";
import type { RefObject } from "preact";
import { useLayoutEffect, useState } from "preact/hooks";

/** A CSS pixel is 1/96 in: what `toSvg` calls a millimetre of screen. */
export const pixelsPerMm = 96 * inUnit("length", quantity("length", 1, "mm"), "in");

/** How wide the room for a drawing is, in whole CSS pixels, and again whenever that changes; 0 before it stands on the page. */
export function useWidth(room: RefObject<HTMLElement | null>, widest: number): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = room.current;
    if (!element) return undefined;
    const look = () => setWidth(Math.min(widest, Math.floor(element.clientWidth)));
    look();
    const watcher = new ResizeObserver(look);
    watcher.observe(element);
    return () => watcher.disconnect();
  }, [widest]);
  return width;
}
