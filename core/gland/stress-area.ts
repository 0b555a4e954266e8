import type { Area, Length } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { Thread } from "./thread.ts";

const threadInputs = [
  { symbol: "d", name: "thread-diameter", unit: "m" },
  { symbol: "P", name: "thread-pitch", unit: "m" },
] as const;

const pitchDiameterRule = rule({
  id: "pitch-diameter",
  symbol: "d2",
  expression: "d − (3√3/8) P",
  unit: "m",
  inputs: threadInputs,
  citation: { source: "iso-724", at: "60° profile; d − 0.649519 P" },
});

const rootDiameterRule = rule({
  id: "thread-root-diameter",
  symbol: "d3",
  expression: "d − (17√3/24) P",
  unit: "m",
  inputs: threadInputs,
  citation: { source: "iso-68-1", at: "d1 − H/6; d − 1.226869 P" },
});

const isoAreaRule = rule({
  id: "stress-area-iso",
  symbol: "A_s",
  name: "stress-area",
  expression: "π/4 · ((d2 + d3) / 2)²",
  unit: "m2",
  inputs: [
    { symbol: "d2", name: "pitch-diameter", unit: "m" },
    { symbol: "d3", name: "thread-root-diameter", unit: "m" },
  ],
  citation: { source: "iso-898-1", at: "nominal stress area" },
});

const unifiedAreaRule = rule({
  id: "stress-area-unified",
  symbol: "A_s",
  name: "stress-area",
  expression: "π/4 · (d − 0.9743 P)²",
  unit: "m2",
  inputs: threadInputs,
  citation: { source: "asme-b1-1", at: "tensile stress area, 0.7854 (D − 0.9743/n)²", seen: "memory" },
});

/** Pitch diameter, the same for both families: both have the 60° profile. */
export function pitchDiameter(work: Workings, { diameter, pitch }: Thread): Length {
  return work.step(pitchDiameterRule, [diameter, pitch], (diameter - ((3 * Math.sqrt(3)) / 8) * pitch) as Length);
}

/** Depth of the root fillet: the diameter that ISO calls d3. */
export function rootDiameter(work: Workings, { diameter, pitch }: Thread): Length {
  return work.step(rootDiameterRule, [diameter, pitch], (diameter - ((17 * Math.sqrt(3)) / 24) * pitch) as Length);
}

/** The area that carries the load, by the formula of the thread's own family. */
export function stressArea(work: Workings, thread: Thread): Area {
  const { diameter, pitch } = thread;
  if (thread.family === "unified") {
    return work.step(unifiedAreaRule, [diameter, pitch], ((Math.PI / 4) * (diameter - 0.9743 * pitch) ** 2) as Area);
  }
  const d2 = pitchDiameter(work, thread);
  const d3 = rootDiameter(work, thread);
  return work.step(isoAreaRule, [d2, d3], ((Math.PI / 4) * ((d2 + d3) / 2) ** 2) as Area);
}
