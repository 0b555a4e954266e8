// What continuous integration runs: the test command, the checks, the deep tier; ends with one line of counts.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { attempt, root } from "./prepare.mjs";

let passed = 0;
let failed = 0;
for (const script of ["test", "check", "test:deep"]) {
  const status = attempt("npm", script === "test" ? ["test"] : ["run", script]);
  if (status === 0) passed++;
  else failed++;
}
for (const tier of ["quick", "deep"]) {
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(join(root, ".ringwright", `tests-${tier}.json`), "utf8"));
    passed += numPassedTests;
    failed += numFailedTests;
  } catch (error) {
    console.error(`No report of tier ${tier}: ${error.message}`);
    failed++;
  }
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
