import type { StressCurve } from "@ringwright/drawings";

/** How much of a further push reaches the middle of a ring, as the curve shows it. */
export function reaching(curve: StressCurve["curves"][number] | undefined, from: number, to: number): number | undefined {
  const middle = (from + to) / 2;
  const points = [...(curve?.points ?? [])].sort((one, other) => one.fromThroat - other.fromThroat);
  const after = points.findIndex(({ fromThroat }) => fromThroat >= middle);
  const [one, other] = [points[after - 1], points[after]];
  if (!other) return points.at(-1)?.share;
  if (!one || other.fromThroat === one.fromThroat) return other.share;
  return one.share + ((other.share - one.share) * (middle - one.fromThroat)) / (other.fromThroat - one.fromThroat);
}
