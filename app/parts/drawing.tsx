import { type Drawing as Drawn, toSvg } from "@ringwright/drawings";
import { useLayoutEffect, useRef } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";
import { useInTurn } from "./turn.ts";
import { pixelsPerMm, useWidth } from "./width.ts";

/**
 * A drawing as wide as the room it stands in, laid out anew when that changes:
 * on a narrow screen fewer words stand beside the lines, and never smaller ones.
 * Drawn when it has come into view, one after the other, so that a tap shows first.
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
  const room = useRef<HTMLDivElement>(null);
  const system = useWorkshop().preferences.units.value;
  const width = useWidth(room, widest);
  const prefix = idPrefix === undefined ? {} : { idPrefix };
  const write = () => (width < 40 ? "" : toSvg(drawing, { width: width / pixelsPerMm, system, heading, background: "none", ...prefix }));
  const svg = useInTurn(room, write, [drawing, width, system, heading, idPrefix]) ?? "";
  const name = idPrefix ?? drawing.name;
  useLayoutEffect(() => {
    const part = mark === undefined ? null : room.current?.querySelector(`[id="${name.replace(/[^\w-]+/gu, "-")}-${mark}"]`);
    part?.classList.add("asked");
    return () => part?.classList.remove("asked");
  }, [svg, mark]);
  useLayoutEffect(() => {
    if (svg !== "" && room.current) heights.set(name, room.current.clientHeight);
  }, [svg]);
  const minHeight = svg === "" ? heights.get(name) : undefined;
  // One SVG document from drawings/svg, which escapes what people typed.
  return <div ref={room} class="drawing" style={{ minHeight }} dangerouslySetInnerHTML={{ __html: svg }} />;
}

/** How high each drawing last stood, so that a page holds its place open and nothing under a finger moves. */
const heights = new Map<string, number>();
