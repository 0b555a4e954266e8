export { type Opening, open } from "./open.ts";
export { type Appended, type Kept, type Page, type Store, StoreFault } from "./store.ts";
