export { demoEntries } from "./entries.ts";
export { demoPeople, demoSite } from "./ids.ts";
