import type { Balloon, Point } from "../shapes.ts";
import { type Run, runsWidth } from "../text/runs.ts";
import type { ToPaper } from "./paper.ts";
import { nothing, type Placed, type PlacedPath, placeLine, placeText, together } from "./placed.ts";
import type { Style } from "./style.ts";

/** Smallest and largest radius of a number's circle, in text sizes. */
const smallestBalloon = 0.5;
const largestBalloon = 0.95;
const besideBalloon = 0.8;

/** Numbers in circles; those without room stand in a row under the drawing, on leaders. */
export function placeBalloons(balloons: readonly Balloon[], toPaper: ToPaper, scale: number, edge: number, style: Style): Placed {
  const { size } = style;
  // A little less than the smallest will do, so that rings squeezed by a hair keep their numbers.
  const enough = ({ room }: Balloon) => room * scale >= 0.85 * smallestBalloon * size;
  const inside = balloons.filter((balloon) => !balloon.beside && enough(balloon));
  const outside = balloons
    .filter((balloon) => !balloon.beside && balloon.lead && !enough(balloon))
    .sort((a, b) => toPaper(a.at)[0] - toPaper(b.at)[0]);
  let placed = nothing;
  for (const balloon of inside) {
    const room = balloon.room * scale;
    const radius = Math.min(largestBalloon * size, Math.max(smallestBalloon * size, 0.56 * room), 0.92 * room);
    placed = together(placed, numbered(balloon, toPaper(balloon.at), radius));
  }
  for (const balloon of balloons) {
    if (!balloon.beside) continue;
    const [x, y] = toPaper(balloon.at);
    placed = together(placed, numbered(balloon, [x + balloon.beside[0] * size, y + balloon.beside[1] * size], besideBalloon * size));
  }
  const pitch = 2.7 * smallestBalloon * size;
  const centres: number[] = [];
  for (const balloon of outside) centres.push(Math.max(toPaper(balloon.at)[0], (centres.at(-1) ?? Number.NEGATIVE_INFINITY) + pitch));
  for (const [i, balloon] of outside.entries()) {
    const radius = smallestBalloon * size;
    const centre: Point = [centres[i] as number, edge - radius - 1.1 * size];
    const [x, y] = toPaper(balloon.at);
    const foot: Point = [x, edge - 0.4 * size];
    const dx = centre[0] - foot[0];
    const dy = centre[1] - foot[1];
    const reach = 1 - radius / Math.hypot(dx, dy);
    const leader: PlacedPath = placeLine("leader", "worked", [[[x, y], foot, [foot[0] + dx * reach, foot[1] + dy * reach]]]);
    placed = together(placed, numbered(balloon, centre, radius), { ...nothing, paths: [{ ...leader, part: balloon.part }] });
  }
  return placed;
}

function numbered({ id, part, text }: Balloon, centre: Point, radius: number): Placed {
  const runs: readonly Run[] = [{ text, face: "numbers", bold: true }];
  // A number fits its circle by width as well as by height.
  const size = Math.min(1.28 * radius, (1.5 * radius) / runsWidth(runs, 1));
  return together(
    { ...nothing, circles: [{ id, part, centre, radius }] },
    placeText({ id, part, runs, at: centre, anchor: "middle", size, ink: "worked" }),
  );
}
