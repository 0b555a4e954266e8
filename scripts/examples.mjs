// Writes the reply into each example in answers/examples/ again. Read the difference before committing it.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { must, prepare, root } from "./prepare.mjs";

prepare();
const { ask } = await import("../answers/dist/index.js");
const { readAllFacts } = await import("../data/dist/read.js");
const folder = join(root, "answers", "examples");
for (const name of readdirSync(folder).filter((file) => file.endsWith(".json"))) {
  const path = join(folder, name);
  const { question } = JSON.parse(readFileSync(path, "utf8"));
  writeFileSync(path, `${JSON.stringify({ question, reply: ask(name.replace(".json", ""), question, readAllFacts()) }, null, 2)}\n`);
}
must("node", ["cli/bin/ringwright.js", "plan", "answers/examples/box.yaml", "--drawing", "docs/box.svg"], {
  stdio: ["ignore", "ignore", 2],
});
must("git", ["--no-pager", "diff", "--stat", "--", "answers/examples", "docs/box.svg"]);
