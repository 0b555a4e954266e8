import { type Drawing as Drawn, toSvg } from "@ringwright/drawings";
import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";

/** A CSS pixel is 1/96 in: what `toSvg` calls a millimetre of screen. */
const pixelsPerMm = 96 / 25.4;

/**
 * A drawing as wide as the room it stands in, laid out anew when that changes:
 * on a narrow screen fewer words stand beside the lines, and never smaller ones.
 */
export function Drawing({
  of: drawing,
  heading = false,
  widest = 1400,
  idPrefix,
  mark,
}: {
  readonly of: Drawn;
  readonly heading?: boolean;
  /** CSS pixels. */
  readonly widest?: number;
  readonly idPrefix?: string;
  /** The part that is pointed at, by its id. */
  readonly mark?: string | undefined;
}) {
  const { units } = useWorkshop().preferences;
  const room = useRef<HTMLDivElement>(null);
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
  const system = units.value;
  const svg = useMemo(
    () =>
      width < 40
        ? ""
        : toSvg(drawing, {
            width: width / pixelsPerMm,
            system,
            heading,
            background: "none",
            ...(idPrefix === undefined ? {} : { idPrefix }),
          }),
    [drawing, width, system, heading, idPrefix],
  );
  useLayoutEffect(() => {
    const prefix = (idPrefix ?? drawing.name).replace(/[^\w-]+/gu, "-");
    const part = mark === undefined ? null : room.current?.querySelector(`[id="${prefix}-${mark}"]`);
    part?.classList.add("asked");
    return () => part?.classList.remove("asked");
  }, [svg, mark]);
  // One SVG document from drawings/svg, which escapes what people typed.
  return <div ref={room} class="drawing" dangerouslySetInnerHTML={{ __html: svg }} />;
}
