// npm test: installs, builds, runs every check of one tier. Imports nothing from node_modules before installing.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { prepare, root, tool } from "./prepare.mjs";
import { pagesFrom, stalePages, writePages } from "./verification.mjs";

const tier = process.argv[2] ?? "quick";
const writing = process.argv.includes("--write-verification");
const seed = Number(process.env.RINGWRIGHT_SEED ?? Date.now() % 2 ** 31);
prepare({ app: true });

const tiers = JSON.parse(readFileSync(join(root, "testing", "tiers.json"), "utf8"));
const counts = tiers[tier];
if (!counts) {
  console.error(`There is no tier “${tier}”: ${Object.keys(tiers).join(", ")}.`);
  process.exit(1);
}

const notes = join(root, ".ringwright");
mkdirSync(notes, { recursive: true });
const countsFile = join(notes, `counts-${tier}.tsv`);
const againstFile = join(notes, `against-${tier}.jsonl`);
const report = join(notes, `tests-${tier}.json`);
rmSync(report, { force: true });
writeFileSync(countsFile, "");
writeFileSync(againstFile, "");

console.log(`Tier ${tier}; fresh seed ${seed} (set RINGWRIGHT_SEED to run it again).`);
const status = tool("vitest", ["run", "--reporter=dot", "--reporter=json", `--outputFile.json=${report}`], {
  env: {
    ...process.env,
    RINGWRIGHT_TIER: tier,
    RINGWRIGHT_SEED: String(seed),
    RINGWRIGHT_COUNTS: countsFile,
    RINGWRIGHT_AGAINST: againstFile,
  },
});

const { numPassedTests = 0, numFailedTests = 0, numTotalTests = 0 } = JSON.parse(readFileSync(report, "utf8"));
const ran = new Map();
for (const line of readFileSync(countsFile, "utf8").split("\n").filter(Boolean)) {
  const [name, done] = line.split("\t");
  ran.set(name, Math.min(ran.get(name) ?? Number.POSITIVE_INFINITY, Number(done)));
}
const short = Object.entries(counts)
  .filter(([name, wanted]) => (name === "tests" ? numPassedTests < wanted : (ran.get(name) ?? 0) < wanted))
  .map(([name, wanted]) => `${name}: ${name === "tests" ? numPassedTests : (ran.get(name) ?? 0)} of ${wanted}`);
for (const line of short) console.error(`Fewer than tier ${tier} asks for: ${line}`);

const pages = pagesFrom(againstFile);
if (writing && status === 0) writePages(pages);
const stale = stalePages(pages);
for (const name of stale)
  console.error(`docs/verification/${name} does not say what the tests found: npm run verification writes it again.`);

const skipped = numTotalTests - numPassedTests - numFailedTests;
if (skipped > 0) console.error(`${skipped} tests did not run.`);
const failed = numFailedTests + short.length + stale.length + skipped;
console.log(`${numPassedTests} passed, ${failed} failed`);
process.exitCode = status !== 0 || failed > 0 ? 1 : 0;
