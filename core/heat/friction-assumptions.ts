import { rule } from "../workings/index.ts";

/** Ratio of radial to axial stress taken when none was measured. */
export const ratioTaken = rule({
  id: "ratio-taken",
  name: "ratio",
  symbol: "K",
  expression: "taken for lack of a measurement",
  unit: "1",
  inputs: [],
  citation: { source: "drago-evans-2017", at: "0.50 as commonly used for stems; the spread is from memory" },
  assumed: { min: 0.3, max: 0.9 },
});

/** Friction of packing on the bore, standing. */
export const frictionBoreTaken = rule({
  id: "friction-bore-taken",
  name: "frictionBore",
  symbol: "μ_o",
  expression: "taken for lack of a measurement",
  unit: "1",
  inputs: [],
  citation: { source: "flexible-graphite-sheet", at: "below 0.10 on steel for graphite; the spread is from memory", seen: "memory" },
  assumed: { min: 0.05, max: 0.25 },
});

/** Friction of wet packing on a turning shaft. */
export const frictionRunningTaken = rule({
  id: "friction-running-taken",
  name: "frictionRunning",
  symbol: "μ_d",
  expression: "taken for lack of a measurement",
  unit: "1",
  inputs: [],
  citation: { source: "memory", at: "no published figure found; a factor of twenty between the ends" },
  assumed: { min: 0.005, max: 0.1 },
});
