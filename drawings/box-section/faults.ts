import type { Says } from "@ringwright/core/workings";
import { frameOf, mm, movement } from "./frame.ts";
import type { BoxDrawing } from "./input.ts";

/** Millimetres by which two parts may overlap through rounding. */
const slack = 1e-6;
/** Metres beyond which nothing is a stuffing box. */
const endless = 100;

/** Why a box cannot be drawn to scale: as sentences, none when it can. */
export function faultsOf(box: BoxDrawing): readonly Says[] {
  const bad = Object.entries(sizesOf(box)).filter(([, value]) => value !== undefined && !(value > 0 && value < endless));
  if (bad.length > 0) return bad.map(([what]) => ({ id: "drawing-cannot-size", with: { what } }));
  const faults = [...radial(box), ...axial(box)];
  return faults.length > 0 ? faults : moving(box);
}

function sizesOf({ shaft, bore, depth, sleeve, port, studs, follower, throat }: BoxDrawing): Readonly<Record<string, number | undefined>> {
  const zeroIsFine = (value: number | undefined) => (value === 0 ? undefined : value);
  return {
    shaft: shaft.value,
    bore: bore.value,
    depth: depth.value,
    sleeve: sleeve?.bore?.value,
    port: port?.diameter.value,
    stud: studs?.diameter,
    "thread-left": zeroIsFine(studs?.left?.value),
    nose: follower?.nose?.value,
    flange: follower?.flange,
    "gland-gap": zeroIsFine(follower?.gap?.value),
    "follower-clearance": follower?.clearance,
    "throat-gap": throat?.gap,
    "throat-bush": throat?.bush?.wall,
  };
}

function radial({ shaft, bore, sleeve, follower, throat }: BoxDrawing): readonly Says[] {
  const section = (bore.value - shaft.value) / 2;
  if (section <= 0) return [{ id: "drawing-cannot-bore" }];
  const faults: Says[] = [];
  if (sleeve?.bore && sleeve.bore.value >= shaft.value) faults.push({ id: "drawing-cannot-sleeve" });
  if ((follower?.clearance ?? 0) > section / 2) faults.push({ id: "drawing-cannot-size", with: { what: "follower-clearance" } });
  if ((throat?.gap ?? 0) >= section) faults.push({ id: "drawing-cannot-size", with: { what: "throat-gap" } });
  return faults;
}

function axial({ parts, lantern, port, depth }: BoxDrawing): readonly Says[] {
  const faults: Says[] = [];
  const spans = [...parts, ...(lantern ? [lantern] : [])].map(({ from, to }) => [mm(from), mm(to)] as const).sort((a, b) => a[0] - b[0]);
  const fine = spans.every(([from, to], i) => to > from && to < mm(depth.value) + 1e4 && from >= (spans[i - 1]?.[1] ?? 0) - slack);
  if (!fine) faults.push({ id: "drawing-cannot-overlap" });
  if (lantern && !(lantern.window > 0 && lantern.window < lantern.to - lantern.from)) faults.push({ id: "drawing-cannot-lantern" });
  if (port) {
    const [at, radius] = [port.fromThroat.value, port.diameter.value / 2];
    if (!(at - radius > 0 && at + radius < depth.value)) faults.push({ id: "drawing-cannot-port" });
  }
  return faults;
}

function moving(box: BoxDrawing): readonly Says[] {
  const { gland } = movement(box);
  const share = box.moved?.share ?? 0;
  if (!(gland >= 0 && share >= 0 && share <= 1)) return [{ id: "drawing-cannot-move" }];
  const left = box.studs?.left;
  if (left && gland > mm(left.value) + slack) return [{ id: "drawing-cannot-move" }];
  const { parts, lantern, flange, depth, setEnd } = frameOf(box);
  const spans = [...parts, ...(lantern ? [lantern] : [])].sort((a, b) => a.from - b.from);
  const room = spans.every(({ from, to }, i) => to > from && from >= (spans[i - 1]?.to ?? 0) - slack);
  if (!room || (gland > 0 && flange < depth - slack)) return [{ id: "drawing-cannot-move" }];
  return flange < depth - slack || flange <= setEnd ? [{ id: "drawing-cannot-reach" }] : [];
}
