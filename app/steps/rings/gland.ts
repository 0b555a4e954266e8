import type { Length } from "@ringwright/core/units";
import { useCallback, useEffect, useMemo, useRef, useState } from "preact/hooks";
import { glided, onWay, type Way } from "./travel.ts";

/** After so many milliseconds without a movement all of the drawing is drawn. */
const patience = 150;
const glideTime = 320;

/**
 * Where the gland is on screen. Movements are taken once a frame, however fast
 * they come; a glide takes its time unless the reader wants none.
 */
export function useGland(way: Way) {
  const [gland, setGland] = useState<Length>(0 as Length);
  const [settled, setSettled] = useState(true);
  const held = useRef(false);
  const from = useRef<Length>(0 as Length);
  const wanted = useRef<Length | undefined>(undefined);
  const frame = useRef(0);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const at = onWay(way, gland);

  useEffect(
    () => () => {
      cancelAnimationFrame(frame.current);
      clearTimeout(timer.current);
    },
    [],
  );

  const settleSoon = () => {
    clearTimeout(timer.current);
    if (!held.current) timer.current = setTimeout(() => setSettled(true), patience);
  };
  const show = (to: Length) => {
    setSettled(false);
    setGland(to);
    settleSoon();
  };
  const put = useCallback((to: Length) => {
    const first = wanted.current === undefined;
    wanted.current = to;
    if (!first) return;
    cancelAnimationFrame(frame.current);
    frame.current = requestAnimationFrame(() => {
      const last = wanted.current;
      wanted.current = undefined;
      if (last !== undefined) show(last);
    });
  }, []);
  const glide = (to: Length) => {
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
      put(to);
      return;
    }
    cancelAnimationFrame(frame.current);
    wanted.current = undefined;
    const began = performance.now();
    const step = (now: number) => {
      const time = (now - began) / glideTime;
      show(glided(at, to, time));
      if (time < 1) frame.current = requestAnimationFrame(step);
    };
    frame.current = requestAnimationFrame(step);
  };
  const take = () => {
    held.current = true;
    from.current = at;
    clearTimeout(timer.current);
  };
  const hold = useMemo(() => Object.assign(take, { from }), [at]);
  const letGo = () => {
    held.current = false;
    settleSoon();
  };
  return { gland: at, settled, put, glide, hold, letGo };
}
