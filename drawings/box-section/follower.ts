import type { Fill, Shape } from "../shapes.ts";
import type { BoxFrame } from "./frame.ts";
import { halves, type Pieces, rectangle, region } from "./pieces.ts";

/** The gland follower: nose in the box, flange outside, hatched the other way from the box wall, with clearance round each stud. */
export function follower(frame: BoxFrame): Pieces {
  const { setEnd, flange, flangeEnd, followerInside, followerOutside, flangeRadius, stud, section } = frame;
  const fill: Fill = { kind: "hatch", lean: -45, spacing: 1.7, from: setEnd };
  const shapes: Shape[] = [];
  const play = stud ? Math.max(0.12 * stud.radius, 0.02 * section) : 0;
  const inner = stud ? stud.at - stud.radius - play : flangeRadius;
  for (const { half, sign } of halves) {
    shapes.push(
      region(
        `follower-${half}`,
        "follower",
        [
          [setEnd, followerInside],
          [flangeEnd, followerInside],
          [flangeEnd, inner],
          [flange, inner],
          [flange, followerOutside],
          [setEnd, followerOutside],
        ],
        sign,
        fill,
      ),
    );
    if (stud)
      shapes.push(
        region(`follower-${half}-rim`, "follower", rectangle([flange, stud.at + stud.radius + play, flangeEnd, flangeRadius]), sign, fill),
      );
  }
  return { parts: [{ id: "follower", called: { id: "drawing-part-follower" } }], shapes };
}
