import { readFileSync } from "node:fs";
import { type Json, work } from "@ringwright/answers";
import type { Plan } from "@ringwright/core/plan";
import type { Found } from "@ringwright/core/workings";
import { readAllFacts } from "@ringwright/data";
import Document from "pdfkit";
import { parse } from "yaml";
import { readFonts } from "../../cli/src/plan-card.ts";
import { type CardOptions, drawCard, fontFiles } from "../index.ts";

const facts = readAllFacts();
export const fonts = readFonts(fontFiles);

export type SurveyFile = Readonly<Record<string, Json>>;

/** The box that the program hands out to fill in. */
export const example = parse(readFileSync(new URL("../../answers/examples/box.yaml", import.meta.url), "utf8")) as SurveyFile;

/** A set of twelve rings in a deep box with many studs and the longest name that is taken. */
export const longBox: SurveyFile = {
  name: "Number two standby effluent lift pump at the far north-western corner of the old bleaching hall, upper box",
  place: "Sallowmere board mill (invented), line three, basement, behind the white water tanks, next to the old switch room",
  motion: "turning",
  zone: "hazardous",
  release: "not-allowed",
  shaft: { readings: ["60 mm"], how: "micrometer" },
  bore: { readings: ["85 mm"], how: "caliper" },
  depth: { readings: ["175 mm"], how: "depth-gauge" },
  lantern: { wanted: true, width: "20 mm", land: "3 mm" },
  port: { fromFace: "90 mm", diameter: "8 mm" },
  follower: { nose: "40 mm" },
  set: { rings: 12 },
  studs: { count: 48, thread: "M12" },
  hazards: { toxic: "yes", flammable: "yes", hot: "yes", oldPacking: "before-1980" },
};

/** A valve stem with its formed rings. */
export const stem: SurveyFile = {
  name: "Stop valve 14",
  motion: "rising-stem",
  shaft: { readings: ["28 mm"], how: "micrometer" },
  bore: { readings: ["44 mm"], how: "caliper" },
  depth: { readings: ["48 mm"], how: "depth-gauge" },
  studs: { count: 2, thread: "M16", propertyClass: "8.8", nutCondition: "oiled" },
  service: { phase: "gas", temperature: "240 °C", pressure: "30 bar" },
};

export function planOf(survey: SurveyFile): Found<Plan> {
  const worked = work("plan", survey, facts);
  if ("malformed" in worked || !worked.found.ok) throw new Error(JSON.stringify(worked));
  return { ...worked.found, value: worked.found.value as Plan };
}

/** The card of a box, its pages as they are written, not packed. */
export function issue(survey: SurveyFile, options: Partial<CardOptions> = {}): Promise<Uint8Array> {
  return drawCard(planOf(survey), {
    Document,
    fonts,
    system: "metric",
    paper: "a4",
    issued: { when: "2026-03-01T14:05:00+01:00", version: "0.1.0" },
    compress: false,
    ...options,
  });
}

/** The page contents of a PDF that is not packed. */
export function written(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString("latin1");
}
