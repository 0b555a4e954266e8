import type { Facts } from "@ringwright/answers";
import type { Store } from "@ringwright/store";

/** Puts the invented site into a store that has never held anything; tells whether it did. */
export async function loadDemo(store: Store, facts: Facts, now: number): Promise<boolean> {
  if ((await store.sites()).length > 0 || (await store.setting("site")) !== undefined) return false;
  // Needed once in the life of a store.
  const { demoEntries, demoPeople, demoSite } = await import("@ringwright/demo");
  for (const { person, name } of demoPeople) await store.namePerson(person, name);
  await store.append(demoSite, demoEntries(now, facts));
  await store.keepSetting("site", demoSite);
  return true;
}
