import type { OfBox } from "../../frame/screen.ts";

export function Rings({ box }: OfBox) {
  return <p>{box.name}</p>;
}
