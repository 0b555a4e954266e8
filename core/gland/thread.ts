import type { Area, Force, Length } from "../units/index.ts";
import { type Answer, begin, type Rule, refuse } from "../workings/index.ts";
import { threadKey } from "./thread-key.ts";

/** A stud thread: what its tables say, in SI. */
export interface Thread {
  /** As the standard designates it: `M12`, `M12x1.25`, `1/2-13 UNC`. */
  readonly name: string;
  readonly family: "metric" | "unified";
  /** Nominal diameter. */
  readonly diameter: Length;
  readonly pitch: Length;
  /** Nominal stress area as the standard prints it, where that was seen. */
  readonly printedArea?: Area;
  /** Proof loads as the standard prints them, by property class, where seen. */
  readonly printedLoads?: Readonly<Record<string, Force>>;
  /** The tables that these stand in. */
  readonly rules: ThreadRules;
}

export interface ThreadRules {
  readonly pitch: Rule;
  readonly printedArea?: Rule;
  readonly printedLoad?: Rule;
}

/** The thread tables, ready to be looked up by what people write. */
export interface ThreadFacts {
  readonly byKey: ReadonlyMap<string, Thread>;
  /** Inch sizes with more than one pitch: which threads a bare size may mean. */
  readonly bySize: ReadonlyMap<string, readonly string[]>;
  readonly names: readonly string[];
}

/**
 * The thread that a person means: `M12`, `M 12 x 1,75`, `1/2-13`, `5/8-11 UNC`,
 * `1/2 UNC`. A metric size alone is the coarse thread, as its designation says;
 * an inch size alone may be coarse or fine and is refused with both names.
 *
 * Units: diameter and pitch m.
 * Range: ISO metric M3 to M39, unified 1/4 to 3 in; `not-known` for anything else.
 * Source: ISO 261 and VDI 2230 (metric), ASME PCC-1 Table 1 and ASME B1.1 (unified), as each thread's rules say.
 * @example findThread("M 12", facts.threads) // pitch 0.00175
 */
export function findThread(thread: string, facts: ThreadFacts): Answer<Thread> {
  const key = threadKey(thread);
  const found = facts.byKey.get(thread) ?? (key === undefined ? undefined : facts.byKey.get(key));
  if (!found) return notKnown(thread, key, facts);
  const work = begin();
  work.step(found.rules.pitch, [found.diameter], found.pitch);
  return work.found(found);
}

function notKnown(thread: string, key: string | undefined, facts: ThreadFacts): Answer<Thread> {
  const ofSize = key === undefined ? undefined : facts.bySize.get(key);
  if (ofSize) {
    const names = ofSize.join(", ");
    return refuse({
      kind: "not-known",
      input: "thread",
      given: thread,
      allowed: ofSize,
      says: { id: "thread-needs-pitch", with: { given: thread, names } },
    });
  }
  return refuse({
    kind: "not-known",
    input: "thread",
    given: thread,
    allowed: facts.names,
    says: { id: "thread-not-known", with: { given: thread } },
  });
}
