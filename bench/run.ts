import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { cpus } from "node:os";
import { type Json, replyOf, work } from "@ringwright/answers";
import { readAllFacts } from "@ringwright/data";
import { parse } from "yaml";
import { root } from "../testing/root.ts";
import { benchApp } from "./app.ts";
import { appendsBesideBareInserts } from "./append.ts";
import { byGeneralSolver, closedForm, offBy } from "./stress-profile.ts";
import { inTurns, timed } from "./time.ts";

const round = (value: number) => (value >= 100 ? Math.round(value).toLocaleString("en") : value.toPrecision(3));
const facts = readAllFacts();
const box = parse(readFileSync(new URL("answers/examples/box.yaml", root), "utf8")) as Json;

const worked = work("plan", box, facts);
if ("malformed" in worked || !worked.found.ok) throw new Error("the example box has no plan");
const { description, found } = worked;
const question = description.question.read(box, "", { typed: new Map() });
if (!question.ok) throw new Error("the example box is malformed");
const survey = question.value as never;

console.log(`Node ${process.versions.node}, ${cpus()[0]?.model.trim() ?? "unknown processor"}, one core at a time, by processor time.`);

console.log(`\nWhole plan of the example box (${found.workings.length} steps of workings)`);
const asData = timed(() => description.work(survey, facts));
const read = timed(() => work("plan", box, facts));
const written = timed(() => JSON.stringify(replyOf(worked)));
console.log(`  workings as data              ${round(asData)} plans/s   (aim 5 000)`);
console.log(`  read from the question first  ${round(read)} plans/s   ${round(asData / read)} times slower than as data`);
console.log(`  expanded to text, serialised  ${round(written)} plans/s   ${round(asData / written)} times slower than as data`);

console.log("\nStress along the box, five rings and a lantern ring");
// What the closed form is held to by its tests; the solver is given the loosest tolerance that comes as near.
const wanted = 1e-12;
let tolerance = 1e-4;
while (offBy(byGeneralSolver(tolerance)) > wanted && tolerance > 1e-15) tolerance /= 10 ** (1 / 40);
const stress = inTurns(closedForm, () => byGeneralSolver(tolerance));
const near = (off: number) => `${off === 0 ? "0" : off.toExponential(1)} off`;
console.log(`  closed form with workings     ${round(stress.one)} /s   ${near(offBy(closedForm()))}, ${wanted} wanted`);
console.log(
  `  general ODE solver (odex)     ${round(stress.other)} /s   ${near(offBy(byGeneralSolver(tolerance)))}, at ${tolerance.toExponential(2)}, the loosest tolerance that comes within ${wanted}`,
);
console.log(`  ratio                         ${round(stress.ratio)} times   (aim 100), timed in turns`);

console.log("\nCommand line, from cold");
const starts = Array.from({ length: 9 }, () => {
  const start = process.hrtime.bigint();
  spawnSync(process.execPath, ["cli/bin/ringwright.js", "answer", "surface-speed"], {
    cwd: root,
    input: '{"shaft":"50 mm","rotation":"1450 rpm"}',
  });
  return Number(process.hrtime.bigint() - start) / 1e6;
}).sort((a, b) => a - b);
const bare = Array.from({ length: 9 }, () => {
  const start = process.hrtime.bigint();
  spawnSync(process.execPath, ["-e", "0"]);
  return Number(process.hrtime.bigint() - start) / 1e6;
}).sort((a, b) => a - b);
const middle = (list: readonly number[]) => list[4] ?? Number.NaN;
console.log(`  ringwright answer             ${round(middle(starts))} ms   (aim under 400)`);
console.log(`  node doing nothing            ${round(middle(bare))} ms   ratio ${round(middle(starts) / middle(bare))}`);

console.log("\nEntries into the logbook, one push after another on one connection, by the clock, both sides warm");
for (const batch of [1, 100, 1000]) {
  const { http, same, alone } = await appendsBesideBareInserts(batch);
  const aim = batch === 100 ? "   (aim 2 or less)" : "";
  console.log(`  ${batch} a push`);
  console.log(`    over HTTP, read and kept             ${round(http)} entries/s`);
  console.log(`    bare inserts, same columns and keys  ${round(same.rate)} entries/s   ratio ${round(same.ratio)}${aim}, in turns`);
  console.log(`    bare inserts, text and id alone      ${round(alone.rate)} entries/s   ratio ${round(alone.ratio)}, in turns`);
}

await benchApp(process.argv.includes("--clone"));
