// A program of its own around a store, for tests that kill it. Uses what was built, as an installation does.
// node child.mjs hold FOLDER ADDRESS    opens the store and stays
// node child.mjs append FOLDER SITE     goes on with a device's chain, saying each entry that is kept
import { createHash } from "node:crypto";
import { writeSync } from "node:fs";
import { canonicalBytes, hashOf, noHead, writeEntry } from "@ringwright/logbook";
import { open, StoreFault } from "@ringwright/store";

const [what, folder, third] = process.argv.slice(2);
// Written past all buffers: what is said here was kept before.
const say = (text) => writeSync(1, `${text}\n`);

let store;
try {
  store = await open(folder, what === "hold" ? { address: third } : {});
} catch (fault) {
  say(fault instanceof StoreFault ? `fault ${fault.id} ${JSON.stringify(fault.shown)}` : `fault ${fault}`);
  process.exit(1);
}
say("open");
if (what === "hold") {
  setInterval(() => undefined, 60_000);
} else {
  const { texts } = await store.since(third, 0, Number.MAX_SAFE_INTEGER - 1);
  const last = texts.length > 0 ? JSON.parse(texts.at(-1)) : undefined;
  let head = last ? { seq: last.seq, hash: hashOf(canonicalBytes(last)) } : noHead;
  for (;;) {
    const batch = [];
    for (let more = 1 + (head.seq % 9); more > 0; more--) {
      const at = { device: "2031-03-01T08:00:00+01:00", serverOffsetMs: null };
      const doing = {
        site: third,
        box: null,
        kind: "note",
        body: { text: `turn ${head.seq}` },
        by: "fitter-1",
        device: third,
        at,
        after: [],
      };
      const written = writeEntry(
        doing,
        head,
        Date.UTC(2031, 2, 1) + head.seq,
        createHash("sha256").update(`${head.seq} ${process.pid}`).digest(),
      );
      head = written.head;
      batch.push({ entry: written.entry, text: written.text });
    }
    const { kept } = await store.append(third, batch);
    say(`kept ${kept.join(" ")}`);
  }
}
