import { type Datum, datums, type Motion, motions, type Release, releases, type Zone, zones } from "@ringwright/core/box";
import { type BoxState, type Next, nextFor, standing } from "@ringwright/logbook";
import { say } from "@ringwright/words";

/** A box at a glance. What nobody has said is unknown, and says so. */
export interface Heading {
  readonly box: string;
  readonly name: string | null;
  readonly place: string | null;
  readonly motion: Motion | "unknown";
  readonly zone: Zone;
  readonly datum: Datum | "unknown";
  readonly release: Release;
  readonly lastEntryAt: string | null;
  /** The one thing to do next, in words. */
  readonly next: { readonly does: Next["does"]; readonly text: string };
}

/** `now`: milliseconds since 1970. */
export function headingOf(state: BoxState, now: number): Heading {
  const { box, fields, entries } = state;
  const { does, says } = nextFor(state, now);
  const text = (field: string) => {
    const value = standing(fields.get(field));
    return typeof value === "string" ? value : null;
  };
  const one = <Choice extends string>(field: string, choices: readonly Choice[]): Choice | "unknown" =>
    choices.find((choice) => choice === text(field)) ?? "unknown";
  const [last] = entries;
  return {
    box: box ?? "",
    name: text("name"),
    place: text("place"),
    motion: one("motion", motions),
    zone: one("zone", zones),
    datum: one("datum", datums),
    release: one("release", releases),
    lastEntryAt: last ? (last.entry.at.happened ?? last.entry.at.device) : null,
    next: { does, text: say(says) },
  };
}
