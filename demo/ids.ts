import { hashOf, uuidv7 } from "@ringwright/logbook";

/** Ten bytes that are the same for the same seed. */
export function randomFrom(seed: string): Uint8Array {
  const hex = hashOf(Uint8Array.from(seed, (character) => character.charCodeAt(0) & 0xff));
  return Uint8Array.from({ length: 10 }, (_, index) => Number.parseInt(hex.slice(2 * index, 2 * index + 2), 16));
}

/** An id that is the same on every machine. */
export function idFrom(seed: string): string {
  return uuidv7(Date.UTC(2026, 0, 1), randomFrom(seed));
}

export const demoSite = idFrom("site: Sallowmere board mill (invented)");
export const demoDevice = idFrom("device: tablet at Sallowmere (invented)");

/** People by opaque ids; none of them lives. */
export const people = {
  fitter: idFrom("person: fitter"),
  second: idFrom("person: second fitter"),
  operator: idFrom("person: operator"),
  engineer: idFrom("person: engineer"),
} as const;

export type Person = keyof typeof people;

/** What the people of the invented site are called. */
export const demoPeople: readonly { readonly person: string; readonly name: string }[] = [
  { person: people.fitter, name: "Fitter (invented)" },
  { person: people.second, name: "Second fitter (invented)" },
  { person: people.operator, name: "Operator (invented)" },
  { person: people.engineer, name: "Reliability engineer (invented)" },
];
