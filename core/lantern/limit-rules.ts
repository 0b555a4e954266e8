import { quantity } from "../units/index.ts";
import { rule } from "../workings/index.ts";

export const closingRule = rule({
  id: "lantern-closing",
  symbol: "y₂",
  name: "lantern-opens-until",
  expression: "max(0, (o + a) / f)",
  unit: "m",
  inputs: [
    { symbol: "o", name: "lantern-offset", unit: "m" },
    { symbol: "a", name: "lantern-open-reach", unit: "m" },
    { symbol: "f", name: "lantern-share", unit: "1" },
  ],
  citation: { source: "jcgm-100-2008", at: "5.1.2 for the uncertainty" },
});

export const shuttingRule = rule({
  ...closingRule,
  id: "lantern-shutting",
  symbol: "y₃",
  name: "lantern-shut-at",
  expression: "max(0, (o + c) / f)",
  inputs: [
    { symbol: "o", name: "lantern-offset", unit: "m" },
    { symbol: "c", name: "lantern-shut-reach", unit: "m" },
    { symbol: "f", name: "lantern-share", unit: "1" },
  ],
});

export const carefulRule = rule({
  id: "lantern-careful-movement",
  symbol: "y_c",
  expression: "max(0, y₂ − k · u)",
  unit: "m",
  inputs: [
    { symbol: "y₂", name: "lantern-opens-until", unit: "m" },
    { symbol: "k", name: "coverage-factor", unit: "1" },
    { symbol: "u", name: "standard-uncertainty", unit: "m" },
  ],
  citation: { source: "jcgm-100-2008", at: "6.2: expanded uncertainty, k = 2, about 95 %" },
});

export const carefulGapRule = rule({
  id: "lantern-careful-gap",
  symbol: "g_c",
  expression: "min(g, max(0, g − y + k · u_g))",
  unit: "m",
  inputs: [
    { symbol: "g", name: "glandGap", unit: "m" },
    { symbol: "y", name: "gland-movement", unit: "m" },
    { symbol: "k", name: "coverage-factor", unit: "1" },
    { symbol: "u_g", name: "gap-uncertainty", unit: "m" },
  ],
  citation: { source: "jcgm-100-2008", at: "6.2: expanded uncertainty, k = 2, about 95 %" },
});

export const lateGapRule = rule({
  ...carefulGapRule,
  id: "lantern-late-gap",
  symbol: "g_l",
  expression: "min(g, max(0, g − y − k · u_g))",
});

export const repackGapRule = rule({
  id: "lantern-repack-gap",
  symbol: "g_r",
  expression: "g_c, up to the whole millimetre",
  unit: "m",
  inputs: [{ symbol: "g_c", name: "lantern-careful-gap", unit: "m" }],
  citation: { source: "own-proposal", at: "careful end of the band, in sizes of drill shanks" },
});

export const portFromThroatTaken = taken("lantern-port-place-uncertainty", "m", 0.3, 1, "a bent wire against a rule");
export const portDiameterTaken = taken("lantern-port-size-uncertainty", "m", 0.1, 0.3, "drill shanks in half millimetres");
export const windowTaken = taken("lantern-window-uncertainty", "m", 0.05, 0.3, "caliper");
export const lanternWidthTaken = taken("lantern-width-uncertainty", "m", 0.05, 0.3, "caliper");
export const heightTaken = taken("lantern-ring-height-uncertainty", "1", 0.006, 0.03, "part of the height of one seated ring");
export const glandGapTaken = taken("lantern-gland-gap-uncertainty", "m", 0.1, 0.5, "drill shanks or caliper at two studs");
export const shareTaken = taken("lantern-share-uncertainty", "1", 0.05, 0.2, "part of the share: rings do not shorten quite alike");

function taken(id: string, unit: string, min: number, max: number, at: string) {
  const scale = unit === "m" ? quantity("length", 1, "mm") : 1;
  return rule({
    id,
    symbol: "u",
    expression: "",
    unit,
    inputs: [],
    citation: { source: "own-proposal", at },
    assumed: { min: min * scale, max: max * scale },
  });
}
