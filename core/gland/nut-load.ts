import type { Force, Torque } from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";
import type { Thread } from "./thread.ts";

const perNutRule = rule({
  id: "load-per-nut",
  symbol: "F",
  expression: "(F_g + F_o) / z",
  unit: "N",
  inputs: [
    { symbol: "F_g", name: "gland-force", unit: "N" },
    { symbol: "F_o", name: "push-out-force", unit: "N" },
    { symbol: "z", name: "nuts", unit: "1" },
  ],
  citation: { source: "mechanics", at: "evenly shared" },
});

const torqueRule = rule({
  id: "nut-torque",
  symbol: "T",
  expression: "K_n · F · d",
  unit: "N*m",
  inputs: [
    { symbol: "K_n", name: "nut-factor", unit: "1", valid: { min: 0.1, max: 0.3 } },
    { symbol: "F", name: "load-per-nut", unit: "N" },
    { symbol: "d", name: "thread-diameter", unit: "m" },
  ],
  citation: { source: "packing-torque-sheet-1996", at: "T = 0.2 F d / z; the factor's band from a web note on nut factors" },
});

/** Load and torque of one nut. */
export function nutLoad(
  work: Workings,
  given: { readonly force: Force; readonly pushOut: Force; readonly nuts: number; readonly factor: number; readonly thread: Thread },
): { readonly perNut: Force; readonly torque: Torque } {
  const { force, pushOut, nuts, factor, thread } = given;
  const perNut = work.step(perNutRule, [force, pushOut, nuts], ((force + pushOut) / nuts) as Force);
  const torque = work.step(torqueRule, [factor, perNut, thread.diameter], (factor * perNut * thread.diameter) as Torque);
  return { perNut, torque };
}
