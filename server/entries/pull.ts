import type { Store } from "@ringwright/store";

/** Which page of a site's entries. */
interface Wanted {
  readonly site: string;
  readonly since: number;
  readonly limit: number;
  /** Characters after which a page is asked for again with fewer entries. */
  readonly largest: number;
}

/** A page of entries as JSON: each with the very bytes that were kept. */
export async function pull(store: Store, { site, since, limit, largest }: Wanted): Promise<string> {
  let most = limit;
  let page = await store.since(site, since, most);
  while (page.texts.length > 1 && page.texts.reduce((sum, text) => sum + text.length, 0) > largest) {
    most = Math.ceil(page.texts.length / 2);
    page = await store.since(site, since, most);
  }
  return `{"entries":[${page.texts.join(",")}],"cursor":${page.cursor},"more":${page.more}}`;
}
