import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { drawBoxSection, drawCutStrip, drawJointClock, drawLimitRuler, drawStressCurve, toSvg } from "../index.ts";
import { family, largeShaft, stockPump, stockPumpMoved, valveStem } from "./boxes.ts";
import { joints, manyJoints, push, shallowStrip, skiveStrip, squareStrip } from "./rings.ts";
import { hardnessRuler, runoutRuler, wornRuler } from "./rulers.ts";

/** The pictures to keep, by name. */
const pictures: Readonly<Record<string, () => string>> = {
  "stock-pump": () => toSvg(drawBoxSection(stockPump), { width: 190 }),
  "stock-pump-on-a-phone": () => toSvg(drawBoxSection(stockPump), { width: 103 }),
  "stock-pump-moved": () => toSvg(drawBoxSection(stockPumpMoved), { width: 190 }),
  "stock-pump-in-inches": () => toSvg(drawBoxSection(stockPump), { width: 190, system: "inch" }),
  "valve-stem": () => toSvg(drawBoxSection(valveStem), { width: 190 }),
  "large-shaft": () => toSvg(drawBoxSection(largeShaft), { width: 190 }),
  "weave-aramid": () => toSvg(drawBoxSection(family("aramid")), { width: 190 }),
  "joint-clock": () => toSvg(drawJointClock(joints), { width: 80 }),
  "joint-clock-of-twelve": () => toSvg(drawJointClock(manyJoints), { width: 103 }),
  "strip-at-45": () => toSvg(drawCutStrip(skiveStrip), { width: 103 }),
  "strip-at-30": () => toSvg(drawCutStrip(shallowStrip), { width: 103 }),
  "strip-square": () => toSvg(drawCutStrip(squareStrip), { width: 103 }),
  "ruler-of-runout": () => toSvg(drawLimitRuler(runoutRuler), { width: 148 }),
  "ruler-of-runout-on-a-phone": () => toSvg(drawLimitRuler(runoutRuler), { width: 76 }),
  "ruler-of-runout-in-inches": () => toSvg(drawLimitRuler(runoutRuler), { width: 110, system: "inch" }),
  "ruler-of-hardness": () => toSvg(drawLimitRuler(hardnessRuler), { width: 110 }),
  "ruler-past-its-limits": () => toSvg(drawLimitRuler(wornRuler), { width: 110 }),
  "push-along-the-set": () => toSvg(drawStressCurve(push), { width: 120 }),
};

for (const [name, draw] of Object.entries(pictures)) {
  test(`the picture ${name} is the one that was looked at`, () => {
    const saved = new URL(`./${name}.svg`, import.meta.url);
    const now = draw();
    if (process.env.RINGWRIGHT_ACCEPT === "pictures") writeFileSync(saved, now);
    const before = existsSync(saved) ? readFileSync(saved, "utf8") : "";
    if (now === before) return;
    const folder = new URL("../../.ringwright/pictures/", import.meta.url);
    mkdirSync(folder, { recursive: true });
    writeFileSync(new URL(`${name}.svg`, folder), now);
    expect.fail(
      `drawings/gallery/${name}.svg is drawn differently now. Look at .ringwright/pictures/${name}.svg beside it. ` +
        "If the new one is right, accept it: RINGWRIGHT_ACCEPT=pictures npx vitest run drawings/gallery",
    );
  });
}
