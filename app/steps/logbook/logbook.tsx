import type { OfBox } from "../../frame/screen.ts";

export function Logbook({ box }: OfBox) {
  return <p>{box.name}</p>;
}
