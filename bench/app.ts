import { loadavg } from "node:os";
import { Served } from "../testing/browser/served.ts";
import { type Came, scriptsToFirstBox } from "./app/bytes.ts";
import { middle, ninetyFifth } from "./app/device.ts";
import { fromClone, secondStart } from "./app/starts.ts";
import { tapped, type Watched } from "./app/taps.ts";

const limit = 200 * 1024;
const slower = 4;
const rounds = 3;
const ms = (value: number) => `${value.toFixed(value < 10 ? 1 : 0)} ms`.padEnd(14);
const bytes = (value: number) => Math.round(value).toLocaleString("en").padStart(8);

/** The app in a browser, from the real server, and how soon that starts. */
export async function benchApp(clone: boolean): Promise<void> {
  const served = await new Served().start();
  try {
    await sizes(served.address);
    await taps(served.address);
  } finally {
    await served.remove();
  }
  const { start, node } = await secondStart();
  console.log(`\nStarts, by the clock${busy()}`);
  console.log(`  npm start, second time        ${start.toFixed(2)} s   until /healthz answers (aim under 3)`);
  console.log(`  node doing nothing            ${node.toFixed(2)} s`);
  if (!clone) {
    console.log("  from a bare clone             not asked for: npm run bench -- --clone");
    return;
  }
  const { page, install } = await fromClone();
  console.log(`  bare clone to the page        ${page.toFixed(1)} s   clone, install, build, start`);
  console.log(`  npm ci alone                  ${install.toFixed(1)} s`);
}

async function sizes(address: string): Promise<void> {
  const scripts = await scriptsToFirstBox(address);
  const sum = (...came: readonly Came[]) => scripts.filter((one) => came.includes(one.came)).reduce((all, one) => all + one.bytes, 0);
  console.log("\nJavaScript until a new box is drawn on Measure, on a fresh device; gzip -9, bytes");
  const said: Readonly<Record<Came, string>> = {
    page: "with the page",
    meanwhile: "by itself meanwhile",
    way: "on the way to the drawing",
    after: "after the drawing",
  };
  for (const [came, words] of Object.entries(said)) {
    const of = scripts.filter((one) => one.came === came);
    console.log(
      `  ${words.padEnd(29)} ${bytes(sum(came as Came))}   ${of.map(({ name, bytes }) => `${name} ${bytes}`).join(", ") || "none"}`,
    );
  }
  console.log(`  needed until the drawing      ${bytes(sum("page", "way"))}   (limit ${limit.toLocaleString("en")})`);
  console.log(`  with what comes meanwhile     ${bytes(sum("page", "meanwhile", "way"))}   (limit ${limit.toLocaleString("en")})`);
}

async function taps(address: string): Promise<void> {
  const slow: Watched[] = [];
  const own: Watched[] = [];
  for (let round = 0; round < rounds; round++) {
    slow.push(await tapped(address, slower));
    own.push(await tapped(address, 1));
  }
  const middleOf = (all: readonly Watched[], figure: (one: Watched) => number) => middle(all.map(figure));
  const p95 = (watched: Watched) => ninetyFifth(watched.taps.map(({ toPaint }) => toPaint));
  console.log(
    `\nTaps, ${slow[0]?.taps.length} a round, the middle of ${rounds} rounds; the browser's own event timing, which goes by 8 ms${busy()}`,
  );
  console.log(
    `  tap to paint, 95 of 100       ${ms(middleOf(slow, p95))} ${slower} times slower (aim 100); ${ms(middleOf(own, p95)).trim()} at full speed`,
  );
  for (const what of new Set(slow[0]?.taps.map((tap) => tap.what))) {
    const of = (watched: Watched) => middle(watched.taps.filter((tap) => tap.what === what).map(({ toPaint }) => toPaint));
    console.log(`    ${what.padEnd(27)} ${ms(middleOf(slow, of))} in the middle; ${ms(middleOf(own, of)).trim()} at full speed`);
  }
  console.log(`  longest task, first page      ${ms(middleOf(slow, (one) => one.atStart))} ${slower} times slower (aim none over 200)`);
  console.log(`  longest task, afterwards      ${ms(middleOf(slow, (one) => one.longest))} ${slower} times slower (aim none over 200)`);
  console.log(
    `  plan and shapes while typing ${ms(middleOf(own, (one) => ninetyFifth(one.drawn)))} 95 of 100, at full speed (aim 16); ${ms(middleOf(own, (one) => middle(one.drawn))).trim()} in the middle; the SVG is written a frame later`,
  );
}

/** What else the machine does: figures by the clock are only as good as that is little. */
function busy(): string {
  return `; load ${(loadavg()[0] ?? Number.NaN).toFixed(1)}`;
}
