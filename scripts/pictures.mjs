// npm run pictures: takes the pictures of README and guide anew, from the invented site in a real browser.
import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { prepare, root } from "./prepare.mjs";

prepare({ app: true });
const { chromium } = await import("playwright-core");
const path = process.env.CHROME_PATH ?? "/usr/bin/chromium";

const screens = { phone: [390, 780], tablet: [1180, 900], desktop: [1440, 900] };
const pictures = [
  ["site", "desktop", "Stock pump 2", undefined],
  ["measure", "phone", "Stock pump 2", "measure/bore"],
  ["overview", "tablet", "Stock pump 2", "measure"],
  ["choose", "tablet", "White-water pump 1", "choose"],
  ["rings", "tablet", "White-water pump 1", "rings"],
  ["fit", "phone", "White-water pump 1", "fit"],
  ["logbook", "phone", "Showerwater pump 3", "logbook"],
];

const folder = mkdtempSync(join(tmpdir(), "ringwright-pictures-"));
const server = spawn("node", ["cli/bin/ringwright.js", "serve"], {
  cwd: root,
  env: { ...process.env, PORT: "0", RINGWRIGHT_DATA: folder, CI: "true" },
});
const address = await new Promise((resolve) => {
  let said = "";
  server.stdout.on("data", (data) => {
    said += data;
    const [found] = /http:\/\/127\.0\.0\.1:\d+/u.exec(said) ?? [];
    if (found) resolve(found);
  });
});
const ask = async (place) => (await fetch(`${address}/api/v1/${place}`)).json();
const { opens } = await ask("sites");
const { boxes } = await ask(`sites/${opens}/boxes`);
const browser = await chromium.launch({ executablePath: path, args: ["--no-sandbox", "--disable-gpu"] });
mkdirSync(join(root, "docs", "pictures"), { recursive: true });
for (const [name, screen, wanted, step] of pictures) {
  const [width, height] = screens[screen];
  const page = await (await browser.newContext({ viewport: { width, height }, timezoneId: "UTC" })).newPage();
  const box = boxes.find((one) => one.name.startsWith(wanted)).box;
  await page.goto(`${address}${step === undefined ? "/" : `/box/${box}/${step}`}`);
  await page.getByText("on this device · sent").waitFor();
  await page.waitForTimeout(1500);
  await page.screenshot({ path: join(root, "docs", "pictures", `${name}-${screen}.png`) });
}
await browser.close();
server.kill();
rmSync(folder, { recursive: true, force: true });
