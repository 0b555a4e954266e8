import type { Json } from "@ringwright/answers";
import { type Fault, readEntry } from "@ringwright/logbook";
import type { Kept, Store } from "@ringwright/store";
import { say } from "@ringwright/words";

/** An entry that was not kept: which of those sent, and why. */
interface Refused {
  readonly index: number;
  readonly id: string | null;
  readonly fault: Fault["id"] | "entry-other-site" | "entry-clashes";
  readonly at: string;
  readonly why: string;
}

interface Pushed {
  readonly kept: readonly string[];
  readonly known: readonly string[];
  readonly refused: readonly Refused[];
  readonly cursor: number;
}

/** Keeps what can be kept of the entries that a device sends, and names the others. */
export async function push(store: Store, site: string, sent: readonly Json[]): Promise<Pushed> {
  const refused: Refused[] = [];
  const fine = new Map<string, Kept & { readonly index: number }>();
  for (const [index, json] of sent.entries()) {
    const refuse = (fault: Refused["fault"], at: string) => refused.push(refusal(index, json, fault, at));
    const read = readEntry(json);
    if (!read.ok) refuse(read.fault.id, read.fault.at);
    else if (read.entry.site !== site) refuse("entry-other-site", "site");
    else {
      const before = fine.get(read.entry.id);
      if (before === undefined) fine.set(read.entry.id, { entry: read.entry, text: read.text, index });
      else if (before.text !== read.text) refuse("entry-clashes", "id");
    }
  }
  const { kept, known, clashing, cursor } = await store.append(site, [...fine.values()]);
  for (const id of clashing) {
    const { index = 0, entry = null } = fine.get(id) ?? {};
    refused.push(refusal(index, entry as Json, "entry-clashes", ""));
  }
  return { kept, known, refused: refused.sort((one, other) => one.index - other.index), cursor };
}

function refusal(index: number, json: Json, fault: Refused["fault"], at: string): Refused {
  const id = typeof json === "object" && json !== null && "id" in json && typeof json.id === "string" ? json.id.slice(0, 100) : null;
  return { index, id, fault, at, why: say({ id: fault, with: { at: at === "" ? "entry" : at } }) };
}
