// npm run check: types, lint and format, directions, unused code, documented functions.
import { attempt, prepare, tool } from "./prepare.mjs";

prepare();
const checks = [
  ["types of tests", () => tool("tsc", ["-p", "tsconfig.test.json"])],
  ["types of the app", () => tool("tsc", ["-p", "app"])],
  ["lint and format", () => tool("biome", ["ci", "."])],
  [
    "directions",
    () =>
      tool("depcruise", [
        "--config",
        ".dependency-cruiser.mjs",
        "core",
        "data",
        "words",
        "answers",
        "drawings",
        "logbook",
        "store",
        "card",
        "demo",
        "server",
        "app",
        "cli",
        "bench",
        "testing",
      ]),
  ],
  ["unused code", () => tool("knip", [])],
  ["documented functions", () => attempt("node", ["scripts/documented.mjs"])],
];
let failed = 0;
for (const [name, check] of checks) {
  console.log(`\n— ${name}`);
  if (check() !== 0) {
    failed++;
    console.error(`✗ ${name}`);
  }
}
console.log(`\n${checks.length - failed} of ${checks.length} checks passed.`);
process.exitCode = failed === 0 ? 0 : 1;
