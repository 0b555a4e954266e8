import { createRequire } from "node:module";
import { stressAlongBox } from "@ringwright/core/gland";
import { type Length, quantity, type Stress } from "@ringwright/core/units";

interface GeneralSolver {
  relativeTolerance: number;
  absoluteTolerance: number;
  solve(derivative: (x: number, y: number[]) => number[], from: number, start: number[], to: number): { readonly y: number[] };
}

// Required, not imported: the package ships its source beside its build, and the compiler would take that for ours.
const { Solver } = createRequire(import.meta.url)("odex") as { readonly Solver: new (dimensions: number) => GeneralSolver };

/** A set of five rings about a lantern ring, with friction on both walls. */
const shaft = quantity("length", 50, "mm");
const bore = quantity("length", 75, "mm");
const glandStress = quantity("stress", 0.5, "MPa");
const ring = { height: quantity("length", 12.5, "mm"), ratio: 0.5, frictionShaft: 0.08, frictionBore: 0.12 };
const lantern = { height: quantity("length", 16, "mm"), ratio: 0, frictionShaft: 0, frictionBore: 0 };
const parts = [ring, ring, ring, lantern, ring, ring];

/** The closed form, with its workings. */
export function closedForm(): Stress {
  const found = stressAlongBox({ shaft, bore, glandStress, parts, turning: false });
  return found.ok ? found.value.atBottom : (Number.NaN as Stress);
}

const decay = (part: Pick<typeof ring, "ratio" | "frictionShaft" | "frictionBore">): number =>
  (4 * part.ratio * (part.frictionShaft * shaft + part.frictionBore * bore)) / (bore * bore - shaft * shaft);

/** The whole stack in one power of e, and how far from it a stress at the bottom is, as a share. */
const exact = glandStress * Math.exp(-parts.reduce((sum, part) => sum + decay(part) * part.height, 0));
export const offBy = (found: Stress): number => Math.abs(found / exact - 1);

/** The same force balance by a general solver, part by part. It gives the stress at the bottom alone: no mean, no workings. */
export function byGeneralSolver(tolerance: number): Stress {
  let axial: number = glandStress;
  for (const part of parts) {
    const solver = new Solver(1);
    solver.relativeTolerance = tolerance;
    solver.absoluteTolerance = tolerance;
    const rate = decay(part);
    axial = solver.solve((_, [stress = 0]) => [-rate * stress], 0, [axial], part.height as Length).y[0] ?? Number.NaN;
  }
  return axial as Stress;
}
