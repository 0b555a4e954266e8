import type { UnitSystem } from "@ringwright/core/units";
import { type Drawing as Drawn, fillsMoved, type LaidOut, sheetOf, toSvg } from "@ringwright/drawings";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";
import { pixelsPerMm, useWidth } from "./width.ts";

/** What a hand may take hold of, in millimetres of the real thing along the axis. */
export interface Grip {
  readonly holds: (x: number) => boolean;
  readonly take: () => void;
  /** So far from where it was taken. */
  readonly pull: (by: number) => void;
  readonly letGo: () => void;
}

/**
 * A drawing with a part that moves. The page and the scale are those of its
 * rest, so that nothing jumps. While it moves, outlines and figures are drawn
 * anew and the hatching and weave are carried along; once settled all of it is
 * drawn.
 */
export function MovingDrawing({
  rest,
  now,
  settled,
  grip,
  onFigure,
  idPrefix,
  widest = 1400,
}: {
  readonly rest: Drawn;
  readonly now: Drawn;
  readonly settled: boolean;
  readonly grip: Grip;
  /** A tap on a figure that was measured, by its id. */
  readonly onFigure: (id: string) => void;
  readonly idPrefix: string;
  /** CSS pixels. */
  readonly widest?: number;
}) {
  const system = useWorkshop().preferences.units.value;
  const room = useRef<HTMLDivElement>(null);
  const canvas = useRef<Canvas | undefined>(undefined);
  const width = useWidth(room, widest) / pixelsPerMm;
  // The page alone: hatching and weave lie inside of outlines and never widen it.
  const like = useMemo(
    () => (width < 10 ? undefined : sheetOf(rest, { width, system, heading: false, bare: true })),
    [rest, width, system],
  );
  useLayoutEffect(() => {
    const host = room.current;
    if (!host || !like) return;
    const began = performance.now();
    if (canvas.current?.like !== like) canvas.current = new Canvas(host, like, { width, system, idPrefix });
    if (settled) canvas.current.draw(now);
    else canvas.current.carry(now);
    performance.clearMeasures("moving-drawing");
    performance.measure("moving-drawing", { start: began, end: performance.now() });
  }, [now, settled, like]);
  const held = useRef<{ readonly pointer: number; readonly x: number } | undefined>(undefined);
  const tapped = useRef<string | undefined>(undefined);
  const along = (event: PointerEvent): number | undefined => {
    const box = room.current?.firstElementChild?.getBoundingClientRect();
    if (!box || !like) return undefined;
    const paper = ((event.clientX - box.left) / box.width) * (like.frame[2] - like.frame[0]);
    return (paper + like.frame[0]) / like.scale;
  };
  const release = () => {
    if (held.current) grip.letGo();
    held.current = undefined;
  };
  // SVG documents from drawings/svg, which escapes what people typed.
  return (
    <div
      ref={room}
      class="drawing moving"
      onPointerDown={(event) => {
        const x = along(event);
        if (event.button !== 0 || x === undefined) return;
        tapped.current = figureAt(event.target);
        if (tapped.current !== undefined || !grip.holds(x)) return;
        held.current = { pointer: event.pointerId, x };
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.take();
      }}
      onPointerMove={(event) => {
        const x = along(event);
        if (x !== undefined && held.current?.pointer === event.pointerId) grip.pull(x - held.current.x);
      }}
      onPointerUp={(event) => {
        const figure = figureAt(event.target);
        if (figure !== undefined && figure === tapped.current) onFigure(figure.slice(idPrefix.length + 1));
        tapped.current = undefined;
        release();
      }}
      onPointerCancel={release}
    />
  );
}

/** The id of the figure in blue that was tapped. */
function figureAt(target: EventTarget | null): string | undefined {
  return (target instanceof Element ? target.closest("text.measured") : null)?.id;
}

/** The SVG element on the page, and what of it can be kept from one step to the next. */
class Canvas {
  readonly like: LaidOut;
  readonly #host: HTMLElement;
  readonly #options: { readonly width: number; readonly system: UnitSystem; readonly idPrefix: string };
  readonly #parser = document.createElement("template");
  #drawn: Drawn | undefined;
  #fills: SVGGElement | undefined;

  constructor(
    host: HTMLElement,
    like: LaidOut,
    options: { readonly width: number; readonly system: UnitSystem; readonly idPrefix: string },
  ) {
    this.#host = host;
    this.like = like;
    this.#options = options;
  }

  /** Draws all of it. */
  draw(drawing: Drawn): void {
    if (this.#drawn === drawing && !this.#fills) return;
    this.#host.replaceChildren(...this.#elements(drawing, false));
    this.#drawn = drawing;
    this.#fills = undefined;
  }

  /** Draws lines and figures, and carries hatching and weave along. */
  carry(drawing: Drawn): void {
    if (!this.#drawn) {
      this.draw(drawing);
      return;
    }
    const fills = this.#fills ?? this.#gathered();
    this.#fills = fills;
    for (const [id, transform] of fillsMoved({ ...this.like, drawing: this.#drawn }, drawing))
      fills.querySelector(`#${CSS.escape(`${this.#options.idPrefix}-${id}`)}`)?.setAttribute("transform", transform);
    const [svg] = this.#elements(drawing, true);
    if (!svg) return;
    svg.querySelector(".part")?.before(fills);
    this.#host.replaceChildren(svg);
  }

  #elements(drawing: Drawn, bare: boolean): readonly Element[] {
    this.#parser.innerHTML = toSvg(drawing, { ...this.#options, heading: false, background: "none", like: this.like, bare });
    return [...this.#parser.content.children];
  }

  #gathered(): SVGGElement {
    const fills = document.createElementNS("http://www.w3.org/2000/svg", "g");
    fills.append(...this.#host.querySelectorAll(".hatch, .weave"));
    return fills;
  }
}
