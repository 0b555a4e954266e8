import { type Angle, inUnit, type Length } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";
import { circle } from "./round.ts";
import type { Balloon, Drawing, Label, Point, Shape, Text } from "./shapes.ts";
import { undrawn } from "./undrawn.ts";

/** Where the joints of a set go, seen facing the follower from the air side. */
export interface JointClock {
  readonly title?: Text;
  readonly shaft: Length;
  readonly bore: Length;
  /** Each ring with its clock hour, 12 at the datum. */
  readonly joints: readonly { readonly ring: number; readonly clock: number }[];
  /** Angle between the cut face and the strip's length; a right angle is a square cut. */
  readonly angle?: Angle;
  /** What is at 12: top, discharge, tag mark. */
  readonly datum?: Text;
}

/** Text sizes from one ring's number to the next, and from the ring to the first. */
const pitch = 1.85;
const stand = 1.25;

/**
 * The joint clock: the ring seen from its end, to scale, a mark across it
 * where each joint lies and the rings' numbers beside it.
 * @example toSvg(drawJointClock({ shaft, bore, joints: [{ ring: 1, clock: 12 }, { ring: 2, clock: 3 }] }), { width: 60 })
 */
export function drawJointClock({ title, shaft, bore, joints, angle, datum }: JointClock): Drawing {
  const [inside, outside] = [inUnit("length", shaft, "mm") / 2, inUnit("length", bore, "mm") / 2];
  const head = { name: "joint-clock", title: title ?? { id: "drawing-joint-clock" } };
  const fine = inside > 0 && outside > inside && outside < 1e5 && joints.every(({ clock }) => clock >= 0 && clock <= 12);
  const lean = angle === undefined ? Math.PI / 2 : angle;
  if (!fine || !(lean > 0 && lean <= Math.PI / 2)) return undrawn(head, [{ id: "drawing-cannot-clock" }]);
  const hours = [...new Set(joints.map(({ clock }) => clock % 12))].sort((a, b) => a - b);
  const shapes: Shape[] = [circle("bore", "ring", outside), circle("shaft", "ring", inside)];
  const balloons: Balloon[] = [];
  const labels: Label[] = [];
  const description: Says[] = [{ id: "drawing-says-clock" }];
  for (const hour of hours) {
    const here = joints.filter(({ clock }) => clock % 12 === hour).map(({ ring }) => ring);
    const turn = (hour * Math.PI) / 6;
    const [ux, uy] = [Math.sin(turn), Math.cos(turn)];
    shapes.push(joint(`joint-${hour || 12}`, turn, inside, outside, lean));
    const sideways = Math.abs(ux) > 0.35;
    for (const [i, ring] of here.entries()) {
      const across = sideways ? Math.sign(ux) * pitch * (ux < 0 ? here.length - 1 - i : i) : pitch * (i - (here.length - 1) / 2);
      const beside: Point = [ux * stand + across, uy * stand];
      balloons.push({
        id: `ring-${ring}-joint`,
        part: "ring",
        text: String(ring),
        at: [ux * outside, uy * outside],
        room: 0,
        lead: false,
        beside,
      });
    }
    const name: Text = hour === 0 && datum !== undefined ? withDatum(datum) : { id: "drawing-clock-hour", with: { hour: hour || 12 } };
    const beyond: Point = sideways
      ? [ux * stand + Math.sign(ux) * (pitch * (here.length - 1) + 1.3), uy * stand]
      : [0, uy * stand + Math.sign(uy) * 1.65];
    const anchor = !sideways ? "middle" : ux > 0 ? "start" : "end";
    labels.push({
      id: `hour-${hour || 12}`,
      lines: [{ text: name, ink: "quiet" }],
      at: [ux * outside, uy * outside],
      place: "here",
      anchor,
      offset: beyond,
    });
    description.push({ id: "drawing-says-joints", with: { hour: hour || 12, rings: here.join(", ") } });
  }
  return {
    ...head,
    description,
    parts: [{ id: "ring", called: { id: "drawing-part-joint-ring" } }],
    shapes,
    dimensions: [],
    balloons,
    labels,
    notes: [{ id: "view", text: { id: "drawing-clock-view" }, ink: "quiet" }],
    toScale: false,
    legible: { length: 2 * outside, sizes: 7 },
  };
}

/** The joint as a dark sliver across the ring; a skive cut leans from the radius by what it leans from square. */
function joint(id: string, turn: number, inside: number, outside: number, lean: number): Shape {
  const mean = (inside + outside) / 2;
  const section = outside - inside;
  const swing = Math.min(0.6, section / 2 / Math.tan(lean) / mean);
  const half = (0.13 * section) / Math.sin(lean);
  const at = (radius: number, angle: number): Point => [radius * Math.sin(angle), radius * Math.cos(angle)];
  const points = [
    at(inside, turn - swing - half / inside),
    at(outside, turn + swing - half / outside),
    at(outside, turn + swing + half / outside),
    at(inside, turn - swing + half / inside),
  ];
  return { id, part: "ring", layer: "outline", points, closed: true, fill: { kind: "solid" } };
}

function withDatum(datum: Text): Text {
  return typeof datum === "string" ? { id: "drawing-clock-datum", with: { hour: 12, datum } } : datum;
}
