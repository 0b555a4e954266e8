import type { Length } from "../units/index.ts";
import { type Refused, refuse, rule, type Workings } from "../workings/index.ts";
import type { Expected } from "./expand.ts";
import type { StepValue } from "./step.ts";

/** What is known beforehand of where things come to lie, measured from the face of the box inwards. */
export interface FaceInputs {
  readonly rings: number;
  /** Rings between throat and lantern ring; left out when there is no lantern ring. */
  readonly lanternAfter?: number;
  /** Depth of each ring's gland-side face once it is home, from the throat. */
  readonly faces?: readonly Length[];
  /** Of the lantern ring's gland-side face, where depths are given. */
  readonly lanternFace?: Length;
  /** Of the face of spacer or bush at the throat, where depths are given. */
  readonly spacerFace?: Length;
  readonly boxDepth?: Length;
  /** Axial height of one seated ring. */
  readonly ringHeight?: Length;
  readonly lanternWidth?: Length;
  readonly spacer?: Length;
}

const faceRule = rule({
  id: "ring-face-depth",
  symbol: "x_k",
  expression: "D − a − k · h − w",
  unit: "m",
  inputs: [
    { symbol: "D", name: "boxDepth", unit: "m" },
    { symbol: "a", name: "spacer", unit: "m" },
    { symbol: "k", name: "ring", unit: "1" },
    { symbol: "h", name: "ringHeight", unit: "m" },
    { symbol: "w", name: "lantern-passed", unit: "m" },
  ],
  citation: { source: "geometry", at: "box depth less all that lies behind the face" },
});

const halfRingRule = rule({
  id: "half-a-ring",
  symbol: "δ",
  expression: "h / 2",
  unit: "m",
  inputs: [{ symbol: "h", name: "ringHeight", unit: "m" }],
  citation: { source: "common-practice", at: "off by half a ring: one is missing, doubled or not home" },
});

export interface Faces {
  /** By ring, from the throat; empty when nothing foretells them. */
  readonly rings: readonly Expected[];
  readonly lantern: Expected | undefined;
  readonly spacer: Expected | undefined;
}

/** Foretells the depth at which each ring, the lantern ring and the spacer come home. */
export function foretell(given: FaceInputs, work: Workings): Faces | Refused {
  const { rings, faces, lanternAfter, boxDepth, ringHeight, lanternWidth = 0 as Length, spacer = 0 as Length } = given;
  const half = ringHeight === undefined ? undefined : work.step(halfRingRule, [ringHeight], (ringHeight / 2) as Length);
  const tolerance: StepValue | undefined = half === undefined ? undefined : { kind: "length", value: half };
  const expected = (depth: number): Expected => ({ predicted: { kind: "length", value: depth }, tolerance });
  if (faces !== undefined) {
    const wrong = wrongFaces(faces, rings);
    if (wrong) return wrong;
    const { lanternFace, spacerFace } = given;
    return {
      rings: faces.map(expected),
      lantern: lanternFace === undefined ? undefined : expected(lanternFace),
      spacer: spacerFace === undefined ? undefined : expected(spacerFace),
    };
  }
  if (boxDepth === undefined || ringHeight === undefined) {
    work.warn({ kind: "gap", says: { id: "fit-no-depths" } });
    return { rings: [], lantern: undefined, spacer: undefined };
  }
  const depths: Length[] = [];
  for (let ring = 1; ring <= rings; ring++) {
    const passed = lanternAfter !== undefined && ring > lanternAfter ? lanternWidth : (0 as Length);
    depths.push(
      work.step(faceRule, [boxDepth, spacer, ring, ringHeight, passed], (boxDepth - spacer - ring * ringHeight - passed) as Length),
    );
  }
  const last = depths.at(-1) ?? (boxDepth as number);
  const lantern =
    lanternAfter === undefined
      ? undefined
      : work.step(
          faceRule,
          [boxDepth, spacer, lanternAfter, ringHeight, lanternWidth],
          (boxDepth - spacer - lanternAfter * ringHeight - lanternWidth) as Length,
        );
  if (Math.min(last, lantern ?? last) < 0) {
    return refuse({ kind: "impossible", input: "rings", given: rings, says: { id: "fit-rings-too-many", with: { rings } } });
  }
  return {
    rings: depths.map(expected),
    lantern: lantern === undefined ? undefined : expected(lantern),
    spacer: given.spacer === undefined ? undefined : expected(boxDepth - spacer),
  };
}

function wrongFaces(faces: readonly Length[], rings: number): Refused | undefined {
  if (faces.length !== rings) {
    return refuse({
      kind: "impossible",
      input: "faces",
      given: faces.length,
      says: { id: "fit-faces-not-rings", with: { faces: faces.length, rings } },
    });
  }
  for (let at = 0; at < faces.length; at++) {
    const face = faces[at] ?? Number.NaN;
    const behind = at === 0 ? Number.POSITIVE_INFINITY : (faces[at - 1] ?? Number.NaN);
    if (!(face >= 0 && face < behind && Number.isFinite(face))) {
      return refuse({
        kind: "impossible",
        input: `faces[${at}]`,
        given: Number.isFinite(face) ? face : String(face),
        says: { id: "fit-face-order", with: { ring: at + 1 } },
      });
    }
  }
  return undefined;
}
