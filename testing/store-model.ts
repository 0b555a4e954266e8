import type { Appended, Kept } from "@ringwright/store";

/** What a store has to do, said again as simply as possible: one list per site, entries handed in one after the other. */
export class StoreModel {
  readonly #sites = new Map<string, Kept[]>();

  append(site: string, batch: readonly Kept[]): Omit<Appended, "cursor"> {
    const said = { kept: [] as string[], known: [] as string[], clashing: [] as string[] };
    for (const one of batch) {
      const list = this.all(site);
      const twin = list.find(({ entry }) => entry.id === one.entry.id);
      const neighbour = list.find(({ entry }) => entry.device === one.entry.device && entry.seq === one.entry.seq);
      if (twin?.text === one.text) said.known.push(one.entry.id);
      else if (twin || neighbour) said.clashing.push(one.entry.id);
      else {
        said.kept.push(one.entry.id);
        this.#sites.set(site, [...list, one]);
      }
    }
    return said;
  }

  all(site: string): Kept[] {
    return this.#sites.get(site) ?? [];
  }
}
