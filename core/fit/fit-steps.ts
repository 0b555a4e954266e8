import { isStem } from "../box/index.ts";
import { type Case, type CautionFacts, type OpenCase, openCase, refuseCase } from "../cautions/index.ts";
import type { Length, Torque } from "../units/index.ts";
import { type Answer, begin, keptByName, keptFor, type Refused, rule } from "../workings/index.ts";
import { type Expected, expand } from "./expand.ts";
import { type FaceInputs, foretell } from "./faces.ts";
import { type Block, linesOf } from "./lines.ts";
import { refuseFit } from "./refuse-fit.ts";
import { type SettingFact, Settings, settingsOf } from "./settings.ts";
import { type Step, type StepFacts, type StepGroup, type StepValue, stepGroups } from "./step.ts";

export interface FitFacts {
  readonly groups: StepFacts;
  /** Reasons to tap that every step has. */
  readonly reasons: readonly string[];
  readonly settings: readonly SettingFact[];
}

/** A box about to be packed: its case, its set, and what is foretold of it. Depths are from the face of the box inwards. */
export interface FitGiven extends Case, FaceInputs {
  /** Clock hour of each ring's joint, from the throat. Left out: 12, 3, 6, 9 and round again. */
  readonly joints?: readonly number[];
  readonly cut?: "butt" | "skive";
  /** Diameter of the bar to cut on: the worn sleeve's. */
  readonly mandrel?: Length;
  /** Tip to tip. */
  readonly cutLength?: Length;
  /** Of the flush port's centre. */
  readonly portDepth?: Length;
  /** Of each nut of a stem's gland, from its load. */
  readonly torque?: Torque;
  readonly oldRingsThroatSide?: number;
  readonly oldRingsGlandSide?: number;
  /** Whether shaft or sleeve is new, so that alignment is looked at again. */
  readonly newShaft?: "yes" | "no" | "unknown";
}

export interface FitSteps {
  readonly steps: readonly Step[];
  readonly rings: number;
  readonly ringsThroatSide: number;
  readonly ringsGlandSide: number;
}

const jointRule = rule({
  id: "joint-turn",
  symbol: "Δ",
  expression: "90° at least",
  unit: "rad",
  inputs: [],
  citation: { source: "neale-1995", at: "B25.4: joints at least 90° apart" },
  assumed: { min: Math.PI / 2, max: Math.PI },
});
const clockHours = [12, 3, 6, 9] as const;

const fitGroups: readonly StepGroup[] = stepGroups.slice(0, stepGroups.indexOf("run"));

/** What of the box itself decides which steps fit it. */
interface BoxSides {
  readonly lantern: "yes" | "no";
  readonly spacer: "yes" | "no";
  readonly cut: "none" | "butt" | "skive";
  readonly newShaft: "yes" | "no" | "unknown";
}

/** The lines for each case and each kind of box. */
const linesFor = keptFor((facts: FitFacts) =>
  keptFor((open: OpenCase) =>
    keptByName((box: BoxSides): readonly Block[] => {
      const { guards } = open;
      const sides = { ...open.sides, ...box, film: filmOf(open.sides) };
      const same = { sides, guards, settings: settingsOf(facts.settings), reasons: facts.reasons };
      return fitGroups.flatMap((group) => linesOf(group, facts.groups[group] ?? [], same));
    }),
  ),
);

/**
 * The steps from kit to start for one box: one thing a step, in order, with
 * what is foretold beside each number and the cautions that stand above it.
 *
 *   x_k = D − a − k h − w  (depth of ring k's face when the box depth is known and no depths are given)
 *
 * Units: lengths m from the face of the box inwards, torque N·m, joints clock hours.
 * Range: 1 to 40 rings; lengths above 0 to 10 m; a set that does not go into the box, or depths that do not shrink ring by ring, are refused.
 * Source: data/steps, each step with its own; depths: geometry.
 * @example fitSteps({ motion: "turning", rings: 5, lanternAfter: 2 }, facts, cautionFacts)
 */
export function fitSteps(given: FitGiven, facts: FitFacts, cautionFacts: CautionFacts): Answer<FitSteps> {
  const refused = refuseCase(given) ?? refuseFit(given);
  if (refused) return refused;
  const work = begin();
  const open = openCase(given, cautionFacts, work);
  const foretold = foretell(given, work);
  if ("ok" in foretold) return foretold;
  if (given.joints === undefined) work.assume(jointRule, Math.PI / 2);
  const { rings, lanternAfter, joints, newShaft = "unknown" } = given;
  const throatSide = lanternAfter ?? rings;
  const made = open.sides.ringForm !== "braid";
  const lantern = lanternAfter === undefined ? "no" : "yes";
  const spacer = given.spacer === undefined && given.spacerFace === undefined ? "no" : "yes";
  const cut = made ? "none" : (given.cut ?? (isStem(given.motion) ? "skive" : "butt"));
  const lines = linesFor(facts)(open)(`${lantern} ${spacer} ${cut} ${newShaft}`, { lantern, spacer, cut, newShaft });
  const steps: Step[] = [];
  expand(steps, lines, {
    settings: new Settings(work, settingsOf(facts.settings)),
    rings,
    throatSide,
    clock: (ring) => joints?.[ring - 1] ?? clockHours[(ring - 1) % clockHours.length],
    expected: (what, ring) => expectedOf(what, ring, given, foretold),
  });
  return work.found({ steps, rings, ringsThroatSide: throatSide, ringsGlandSide: rings - throatSide });
}

/**
 * What keeps the packing alive: flush where there is one, else grease, else the product itself.
 *
 * Units: none.
 * Range: sides that are not known count as not there.
 * Source: own-proposal.
 * @example filmOf({ flush: "yes" }) // "flush"
 */
export function filmOf(sides: { readonly [side: string]: string }): "product" | "flush" | "grease" {
  if (sides.flush === "yes") return "flush";
  return sides.grease === "yes" ? "grease" : "product";
}

function expectedOf(
  what: string,
  ring: number | undefined,
  given: FitGiven,
  faces: Exclude<ReturnType<typeof foretell>, Refused>,
): Expected | undefined {
  switch (what) {
    case "ring-face":
      return ring === undefined ? undefined : faces.rings[ring - 1];
    case "lantern-face":
      return faces.lantern;
    case "spacer-face":
      return faces.spacer;
    case "box-depth":
      return foretelling("length", given.boxDepth);
    case "mandrel":
      return foretelling("length", given.mandrel);
    case "cut-length":
      return foretelling("length", given.cutLength);
    case "port-depth":
      return foretelling("length", given.portDepth);
    case "torque":
      return foretelling("torque", given.torque);
    case "zero-pressure":
      return zeroPressure;
    case "rings":
      return foretelling("count", given.rings);
    case "old-rings-throat-side":
      return foretelling("count", given.oldRingsThroatSide);
    case "old-rings-gland-side":
      return foretelling("count", given.oldRingsGlandSide);
    default:
      return undefined;
  }
}

const zeroPressure: Expected = { predicted: { kind: "pressure", value: 0 } };

function foretelling(kind: StepValue["kind"], value: number | undefined): Expected | undefined {
  return value === undefined ? undefined : { predicted: { kind, value } };
}
