import { quantity } from "@ringwright/core/units";
import type { Says, Shown } from "@ringwright/core/workings";
import type { Label, Note } from "../shapes.ts";
import { noseDiffers } from "./dimensions.ts";
import { type BoxFrame, movement } from "./frame.ts";
import type { BoxDrawing } from "./input.ts";

const shown = (value: number, decimals = 1): Shown => ({ value, kind: "length", decimals });
const millimetres = (value: number): Shown => shown(quantity("length", value, "mm"));

/** What the drawing shows, for someone who cannot see it, and what of it was not measured. */
export function describe(box: BoxDrawing, frame: BoxFrame): readonly Says[] {
  const { lantern, depth, setEnd, flange } = frame;
  const packing = frame.parts.filter(({ part }) => part.kind === "ring" || part.kind === "end-ring");
  const says: Says[] = [
    { id: "drawing-says-box" },
    { id: "drawing-says-sizes", with: { shaft: shown(box.shaft.value), bore: shown(box.bore.value), depth: shown(box.depth.value) } },
    { id: "drawing-says-set", with: { rings: packing.length } },
  ];
  if (lantern) {
    const before = packing.filter(({ from }) => from < lantern.from).length;
    says.push({ id: "drawing-says-lantern", with: { from: millimetres(lantern.from), to: millimetres(lantern.to), before } });
  }
  if (box.port) says.push({ id: "drawing-says-port", with: { at: shown(box.port.fromThroat.value) } });
  if (box.port?.state) says.push({ id: `drawing-says-port-${box.port.state}` });
  if (setEnd > depth) says.push({ id: "drawing-says-stands-out", with: { length: millimetres(setEnd - depth) } });
  else says.push({ id: "drawing-says-entry", with: { length: millimetres(depth - setEnd) } });
  if (box.follower?.gap ?? box.follower?.nose) says.push({ id: "drawing-says-gap", with: { gap: millimetres(flange - depth) } });
  const { gland, lantern: carried } = movement(box);
  if (gland > 0) says.push({ id: "drawing-says-moved", with: { gland: millimetres(gland), lantern: millimetres(carried) } });
  says.push({ id: "drawing-says-convention" }, ...conventions(box));
  if (frame.leftOut > 0) says.push({ id: "drawing-left-out" });
  return says;
}

/** Each part that was drawn by habit because nothing was measured. */
function conventions({ sleeve, throat, follower, studs }: BoxDrawing): readonly Says[] {
  const drawn: readonly (readonly [string, boolean])[] = [
    ["wall", true],
    ["sleeve", sleeve !== undefined && sleeve.bore === undefined],
    ["throat-gap", throat?.gap === undefined],
    ["flange", follower?.flange === undefined],
    ["gland-gap", follower?.gap === undefined && follower?.nose === undefined],
    ["clearance", follower?.clearance === undefined],
    ["studs", studs !== undefined],
  ];
  return drawn.filter(([, by]) => by).map(([what]) => ({ id: `drawing-convention-${what}` }));
}

/** Which end is which, written on the shaft. */
export function sides(box: BoxDrawing, frame: BoxFrame): readonly Label[] {
  const { shaftFrom, shaftTo, bare, leftOut, section } = frame;
  const end = 0.75 * section;
  const width = (shaftTo - shaftFrom - 2 * end) / 2;
  const height = leftOut > 0 ? leftOut : bare;
  const quiet = "quiet" as const;
  return [
    {
      id: "wet-end",
      lines: [{ text: { id: `drawing-${box.wetEnd ?? "pump-side"}` }, ink: quiet }],
      at: [shaftFrom + end, 0],
      place: "inside",
      anchor: "start",
      room: [width, height],
    },
    {
      id: "air-side",
      lines: [{ text: { id: "drawing-air-side" }, ink: quiet }],
      at: [shaftTo - end, 0],
      place: "inside",
      anchor: "end",
      room: [-width, height],
    },
  ];
}

/** Millimetres that a nose and a gap taken with a rule may disagree without anyone having erred. */
const ruleError = 1;

/** What has to be said under the drawing. */
export function notes(box: BoxDrawing, frame: BoxFrame): readonly Note[] {
  const nose = box.follower?.nose;
  return [
    ...(nose && noseDiffers(box, frame) > ruleError
      ? [
          {
            id: "nose-differs",
            text: { id: "drawing-nose-differs", with: { measured: shown(nose.value), drawn: millimetres(frame.flange - frame.setEnd) } },
            ink: "attention" as const,
            bold: true,
          },
        ]
      : []),
    ...(frame.leftOut > 0 ? [{ id: "left-out", text: { id: "drawing-left-out" }, ink: "quiet" as const }] : []),
  ];
}
