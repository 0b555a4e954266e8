import type { OfBox } from "../../frame/screen.ts";

export function Fit({ box }: OfBox) {
  return <p>{box.name}</p>;
}
