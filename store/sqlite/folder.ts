import { closeSync, fsyncSync, mkdirSync, openSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { StoreFault } from "../store.ts";

const marker = "ringwright.json";
const ours = `${JSON.stringify({ program: "ringwright", holds: "store" })}\n`;
/** What a file system or a desk puts into every folder by itself. */
const strays = new Set(["lost+found", ".DS_Store", "desktop.ini"]);

/**
 * Takes a folder for the store: makes it when it is missing, and marks an
 * empty one as ours. One that holds other things and no mark is left alone.
 */
export function claim(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const names = readdirSync(folder).filter((name) => !strays.has(name));
  if (names.includes(marker) && isOurs(readFileSync(join(folder, marker), "utf8"))) return;
  // A mark that breaks off was being written when the power went: nothing else is there yet.
  const begun = names.length === 1 && names[0] === marker && ours.startsWith(readFileSync(join(folder, marker), "utf8"));
  if (names.length > 0 && !begun) throw new StoreFault("store-foreign", { folder });
  const file = openSync(join(folder, marker), "w");
  try {
    writeFileSync(file, ours);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function isOurs(text: string): boolean {
  try {
    return (JSON.parse(text) as { program?: unknown } | null)?.program === "ringwright";
  } catch {
    return false;
  }
}
