import type { Facts } from "@ringwright/answers";
import { Book, type Entry, type Head, noHead, writeEntry } from "@ringwright/logbook";
import type { Act } from "./act.ts";
import { agitator } from "./boxes/agitator.ts";
import { plungerPump } from "./boxes/plunger-pump.ts";
import { sealWaterBooster } from "./boxes/seal-water-booster.ts";
import { showerwaterPump } from "./boxes/showerwater-pump.ts";
import { steamValve } from "./boxes/steam-valve.ts";
import { stockPump } from "./boxes/stock-pump.ts";
import { whiteWaterPump } from "./boxes/white-water-pump.ts";
import { demoDevice, demoSite, people, randomFrom } from "./ids.ts";

const stories = [stockPump, whiteWaterPump, showerwaterPump, sealWaterBooster, steamValve, plungerPump, agitator];

/** An entry with its canonical text. */
interface Written {
  readonly entry: Entry;
  readonly text: string;
}

/**
 * The invented site as entries of one device, in the order in which they were
 * made. Boxes, people and the device have the same ids everywhere; times count
 * back from `now`, milliseconds since 1970.
 */
export function demoEntries(now: number, facts: Facts): readonly Written[] {
  const acts = stories.flatMap((story) => story(facts).acts).sort((one, other) => other.minutesAgo - one.minutesAgo);
  const book = new Book();
  let head = noHead;
  return acts.map((act, index) => {
    const written = writeAct(act, head, book, now, index);
    head = written.head;
    book.add([written.entry]);
    return { entry: written.entry, text: written.text };
  });
}

function writeAct({ box, minutesAgo, by, kind, body }: Act, head: Head, book: Book, now: number, index: number) {
  const ms = Math.round(now - minutesAgo * 60_000);
  const after = book.headsOf({ box, kind, kindVersion: 1, body });
  const at = { device: new Date(ms).toISOString(), serverOffsetMs: 0 };
  return writeEntry(
    { site: demoSite, box, kind, body, by: people[by], device: demoDevice, at, after },
    head,
    ms,
    randomFrom(`entry ${index}`),
  );
}
