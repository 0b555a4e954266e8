import type { GlandMoved } from "@ringwright/core/plan";
import { inUnit, type Length } from "@ringwright/core/units";
import { useRef } from "preact/hooks";
import { useWords, type Words } from "../../parts/words.ts";
import { flatsOf, keyed, onWay, shareOf, type Way } from "./travel.ts";

const shown = (value: number) => ({ value, kind: "length", decimals: 1 });

/** Millimetres to the tenth, for those who count along the bar. */
const tenths = (length: Length) => Math.round(10 * inUnit("length", length, "mm")) / 10;

/** What the gland has moved, what is left of the gap, how the port stands: as one line. */
function standing(words: Words, way: Way, { gland, gap, port }: GlandMoved): readonly string[] {
  const flats = flatsOf(way, gland);
  return [
    gland === 0 ? words("rings-step-finger-tight") : words("rings-step-moved", { gland: shown(gland) }),
    ...(gland === 0 || flats === undefined ? [] : [words(flats === 1 ? "rings-step-one-flat" : "rings-step-flats", { flats })]),
    ...(gap === undefined ? [] : [words("rings-step-gap", { gap: shown(gap) })]),
    ...(port === undefined ? [] : [words(`drawing-port-${port.opening}`)]),
  ];
}

/** The way of the gland from finger-tight to its end: a bar to drag along, and buttons that do the same in single taps. */
export function TravelControl({
  way,
  moved,
  put,
  glide,
  letGo,
}: {
  readonly way: Way;
  readonly moved: GlandMoved;
  readonly put: (to: Length) => void;
  readonly glide: (to: Length) => void;
  readonly letGo: () => void;
}) {
  const words = useWords();
  const bar = useRef<HTMLDivElement>(null);
  const { gland, port } = moved;
  const said = standing(words, way, moved);
  const follow = (event: PointerEvent) => {
    const box = bar.current?.getBoundingClientRect();
    if (box && box.width > 0) put(onWay(way, ((event.clientX - box.left) / box.width) * way.end));
  };
  const step = { step: shown(way.step) };
  const byFlats = way.flat !== undefined;
  return (
    <div class="travel">
      <p class="standing" role="status">
        {said.map((part, i) => (
          <span key={i} class={port && port.opening !== "open" && i === said.length - 1 ? "attention" : undefined}>
            {part}
          </span>
        ))}
      </p>
      <div
        ref={bar}
        class="way"
        role="slider"
        tabIndex={0}
        aria-label={words("rings-step-slider")}
        aria-valuemin={0}
        aria-valuemax={tenths(way.end)}
        aria-valuenow={tenths(gland)}
        aria-valuetext={said.join(", ")}
        onKeyDown={(event) => {
          const to = keyed(way, gland, event.key);
          if (to === undefined) return;
          event.preventDefault();
          put(to);
        }}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          follow(event);
        }}
        onPointerMove={(event) => event.currentTarget.hasPointerCapture(event.pointerId) && follow(event)}
        onPointerUp={letGo}
        onPointerCancel={letGo}
      >
        <Stretches way={way} />
        {way.repack === undefined ? null : <span class="repack" style={{ insetInlineStart: `${100 * shareOf(way, way.repack)}%` }} />}
        <span class="thumb" style={{ insetInlineStart: `${100 * shareOf(way, gland)}%` }} />
      </div>
      <Names way={way} />
      <div class="bar">
        <button type="button" class="second" onClick={() => put(onWay(way, gland - way.step))}>
          {byFlats ? words("rings-step-flat-out") : words("rings-step-out", step)}
        </button>
        <button type="button" class="second" onClick={() => put(onWay(way, gland + way.step))}>
          {byFlats ? words("rings-step-flat-in") : words("rings-step-in", step)}
        </button>
        <button type="button" class="second" onClick={() => glide(0 as Length)}>
          {words("rings-step-back")}
        </button>
        <button type="button" class="second" onClick={() => glide(way.end)}>
          {words("rings-step-end")}
        </button>
      </div>
    </div>
  );
}

/** Where on the way the port is not open, begins to close, is shut. */
function stretchesOf({ opens, closes, shuts, end }: Way) {
  return [
    ...(opens === undefined ? [] : [{ name: "opens", from: 0, to: Math.min(end, opens) }]),
    ...(closes === undefined ? [] : [{ name: "closes", from: closes.low, to: closes.high }]),
    ...(shuts === undefined ? [] : [{ name: "shuts", from: shuts.low, to: end }]),
  ] as const;
}

function Stretches({ way }: { readonly way: Way }) {
  return (
    <>
      {stretchesOf(way).map(({ name, from, to }) => (
        <span
          key={name}
          class={`stretch ${name}`}
          style={{ insetInlineStart: `${(100 * from) / way.end}%`, inlineSize: `${(100 * (to - from)) / way.end}%` }}
        />
      ))}
    </>
  );
}

/** The same by name: what each stretch of the bar is, and what ends the way. */
function Names({ way }: { readonly way: Way }) {
  const words = useWords();
  const { shuts } = way;
  return (
    <ul class="way-names">
      {stretchesOf(way).map(({ name, from, to }) => (
        <li key={name}>
          <span class={`swatch ${name}`} />
          {words(`rings-step-way-${name}`, { from: shown(from), to: shown(name === "shuts" && shuts ? shuts.high : to) })}
        </li>
      ))}
      {way.repack === undefined ? null : (
        <li class="attention">
          <span class="swatch repack-swatch" />
          {words("rings-step-way-repack", { from: shown(way.repack) })}
        </li>
      )}
      <li>
        <span class="swatch end" />
        {words(`rings-step-way-${way.by}`, { end: shown(way.end) })}
      </li>
    </ul>
  );
}
