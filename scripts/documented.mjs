// Every function that a topic of core exports says what it means: units, range and errors, source, an example.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { root } from "./prepare.mjs";

const { default: ts } = await import("typescript"); // loaded late: it is there only after installing
const core = join(root, "core");
const topics = readdirSync(core, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !["node_modules", "dist", "units", "sources", "workings"].includes(entry.name))
  .map((entry) => join(core, entry.name, "index.ts"));
const program = ts.createProgram(topics, {
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  allowImportingTsExtensions: true,
  noEmit: true,
  types: [],
});
const checker = program.getTypeChecker();
const wanted = ["Units:", "Range:", "Source:"];
const faults = [];
let looked = 0;

for (const path of topics) {
  const file = program.getSourceFile(path);
  const module = file && checker.getSymbolAtLocation(file);
  for (const exported of module ? checker.getExportsOfModule(module) : []) {
    const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
    const declaration = symbol.declarations?.find(ts.isFunctionDeclaration);
    if (!declaration) continue;
    looked++;
    const text = ts.displayPartsToString(symbol.getDocumentationComment(checker));
    const missing = wanted.filter((word) => !text.includes(word));
    if (!symbol.getJsDocTags().some((tag) => tag.name === "example")) missing.push("@example");
    if (text.trim().length < 20) missing.push("what it means");
    if (missing.length > 0)
      faults.push(`${declaration.getSourceFile().fileName.replace(`${root}/`, "")}: ${symbol.name} lacks ${missing.join(", ")}`);
  }
}
for (const fault of faults) console.error(fault);
console.log(`${looked} exported functions looked at, ${faults.length} not fully documented.`);
process.exitCode = faults.length > 0 || looked === 0 ? 1 : 0;
