import { type Drawing as Drawn, toSvg } from "@ringwright/drawings";
import type { RefObject } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";
import { useInTurn } from "./turn.ts";
import { pixelsPerMm, useWidth } from "./width.ts";

interface OfDrawing {
  readonly of: Drawn;
  readonly heading?: boolean;
  /** CSS pixels. */
  readonly widest?: number;
  readonly idPrefix?: string;
}

/** How a drawing is written at the width of its room, and what that depends on. */
function useWriting({ of: drawing, heading = false, widest = 1400, idPrefix }: OfDrawing, room: RefObject<HTMLElement | null>) {
  const { units } = useWorkshop().preferences;
  const width = useWidth(room, widest);
  const system = units.value;
  const prefix = idPrefix === undefined ? {} : { idPrefix };
  const write = () => (width < 40 ? "" : toSvg(drawing, { width: width / pixelsPerMm, system, heading, background: "none", ...prefix }));
  return { write, inputs: [drawing, width, system, heading, idPrefix] };
}

/**
 * A drawing as wide as the room it stands in, laid out anew when that changes:
 * on a narrow screen fewer words stand beside the lines, and never smaller ones.
 * Drawn when it has come into view, one after the other, so that a tap shows first.
 */
export function Drawing({
  mark,
  ...given
}: OfDrawing & {
  /** The part that is pointed at, by its id. */
  readonly mark?: string | undefined;
}) {
  const room = useRef<HTMLDivElement>(null);
  const { write, inputs } = useWriting(given, room);
  const svg = useInTurn(room, write, inputs) ?? "";
  const name = given.idPrefix ?? given.of.name;
  useLayoutEffect(() => {
    const prefix = name.replace(/[^\w-]+/gu, "-");
    const part = mark === undefined ? null : room.current?.querySelector(`[id="${prefix}-${mark}"]`);
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
