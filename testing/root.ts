import { existsSync } from "node:fs";

/** The folder of the project, from the sources as from anything built out of them. */
export const root: URL = (() => {
  let folder = new URL("./", import.meta.url);
  while (!existsSync(new URL("cli/bin/ringwright.js", folder))) {
    const above = new URL("../", folder);
    if (above.href === folder.href) throw new Error(`no project above ${import.meta.url}`);
    folder = above;
  }
  return folder;
})();
