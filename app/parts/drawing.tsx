import { type Drawing as Drawn, toSvg } from "@ringwright/drawings";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";
import { pixelsPerMm, useWidth } from "./width.ts";

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
  const width = useWidth(room, widest);
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
