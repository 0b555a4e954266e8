import { createHash } from "node:crypto";
import { canonicalText, type Entry, noHead, readEntryText, writeEntry } from "@ringwright/logbook";

/** An id that is the same for the same name, shaped as a UUID. */
export function idOf(name: string): string {
  const hex = createHash("sha256").update(name).digest("hex");
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-7${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

/** An entry with the canonical text that is its truth. */
export interface Told {
  readonly entry: Entry;
  readonly text: string;
}

/** What tells one invented note from another. */
export interface Chain {
  readonly site: string;
  readonly device: string;
  readonly box?: string | null;
  readonly said?: (index: number) => string;
}

/** The first notes of a device's chain, invented and the same every time. */
export function chainOf({ site, device, box = null, said = (index) => `note ${index}` }: Chain, length: number): readonly Told[] {
  let head = noHead;
  return Array.from({ length }, (_, index) => {
    const at = { device: "2031-03-01T08:00:00+01:00", serverOffsetMs: null };
    const doing = { site, box, kind: "note", body: { text: said(index) }, by: "fitter-1", device, at, after: [] } as const;
    const random = createHash("sha256")
      .update(`${site} ${device} ${index} ${said(index)}`)
      .digest();
    const written = writeEntry(doing, head, Date.UTC(2031, 2, 1) + index, random);
    head = written.head;
    return { entry: written.entry, text: written.text };
  });
}

/** An entry with some of its members changed: another entry, which may take the id or the place of the first. */
export function changed(told: Told, to: Partial<Entry>): Told {
  const read = readEntryText(canonicalText({ ...told.entry, ...to }));
  if (!read.ok) throw new Error(`not an entry: ${read.fault.id} at ${read.fault.at}`);
  return read;
}
