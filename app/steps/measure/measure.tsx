import type { OfBox } from "../../frame/screen.ts";

export function Measure({ box }: OfBox) {
  return <p>{box.name}</p>;
}
