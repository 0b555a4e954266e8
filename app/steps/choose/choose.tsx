import type { OfBox } from "../../frame/screen.ts";

export function Choose({ box }: OfBox) {
  return <p>{box.name}</p>;
}
