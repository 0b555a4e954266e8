import type { Verdict } from "@ringwright/core/condition";
import { reading } from "@ringwright/drawings";
import { useWorkshop } from "../frame/workshop.ts";

/** Writes the figures of one judged point alike, as its ruler does. */
export function useFigure({ limits, houseLimit, measured }: Verdict): (value: number, named: boolean) => string {
  const system = useWorkshop().preferences.units.value;
  const unit = measured?.unit ?? houseLimit?.unit ?? limits[0]?.unit ?? "m";
  const among = Math.max(...limits.map(({ value }) => value), houseLimit?.value ?? 0, measured?.value ?? 0);
  return (value, named) => reading({ value, unit, among, named }, system);
}
