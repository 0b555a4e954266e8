import type { PlausibleField } from "@ringwright/core/uncertainty";
import type { Kind, Typed } from "@ringwright/core/units";

type ByName = ReadonlyMap<string, PlausibleField>;

const length: ByName = named({
  shaft: ["shaft", "stem", "rod", "rodSmallest", "diameter", "mandrel"],
  bore: ["bore"],
  depth: ["depth", "boxDepth"],
  "packed-length": ["packedLength", "length", "glandLength", "throatLength", "ringsHeight"],
  "along-box": [
    "portFromFace",
    "portFromThroat",
    "fromFace",
    "fromThroat",
    "portDepth",
    "found",
    "predicted",
    "faces",
    "lanternFace",
    "spacerFace",
  ],
  section: ["section", "nameplateSection", "clockGaps"],
  "ring-height": ["ringHeight"],
  "part-height": ["height"],
  "lantern-width": ["lanternWidth", "width", "lanternHeight"],
  window: ["window"],
  land: ["land"],
  port: ["portDiameter"],
  gap: ["gapTravel", "glandGap", "gap"],
  entry: ["leastEntry"],
  nose: ["noseLength", "nose"],
  spacer: ["spacer", "throatBush", "belowRings"],
  clearance: ["clearance", "glandClearance", "throatClearance", "followerClearance", "throatGap", "followerGap"],
  runout: ["runout"],
  lift: ["shaftLift", "endFloat"],
  groove: ["sleeveGroove"],
  finish: ["finish", "boreFinish"],
  "reading-error": ["resolution"],
  stroke: ["stroke"],
  "thread-left": ["threadLeft"],
  "thread-pitch": ["pitch"],
  "nut-face": ["faceDiameter"],
  "cut-length": ["cutLength"],
  trim: ["trim"],
  "drip-edge": ["tip"],
});

/** The range of a kind whose name does not matter. */
const ofKind: Partial<Readonly<Record<Kind, PlausibleField>>> = {
  pressure: "pressure",
  "absolute-pressure": "absolute-pressure",
  "pressure-difference": "pressure-drop",
  stress: "gland-stress",
  torque: "torque",
  rotation: "rotation",
  speed: "speed",
  temperature: "temperature",
  "temperature-difference": "temperature-rise",
  flow: "flow",
  power: "power",
  conductance: "conductance",
  viscosity: "viscosity",
  density: "density",
  "heat-capacity": "heat-capacity",
  "surface-tension": "surface-tension",
};

/** Where the name matters for another kind than length. */
const others: Partial<Readonly<Record<Kind, ByName>>> = {
  "absolute-pressure": named({ atmosphere: ["atmosphereAbsolute"] }),
  stress: named({ modulus: ["modulus"] }),
  volume: named({ "drop-volume": ["dropVolume"], catch: ["caught"] }),
};

/** What is no reading of a box: what the sheet of a packing promises, and limits that somebody set. */
function notOfTheBox(path: string): boolean {
  return path.startsWith("items[") || path === "temperatureLimit" || path.includes("houseLimits[");
}

/** What else is known of a question, where a range hangs on it. */
export interface Circumstances {
  readonly motion: string | undefined;
  /** A stem or a rod is named, or it moves like one: pressures that no pump's box sees are usual. */
  readonly strokes: boolean;
}

/** The range that a quantity of a question is held against; undefined where none is known. */
export function likelyRange(path: string, { kind }: Typed, about: Circumstances): PlausibleField | undefined {
  if (notOfTheBox(path)) return undefined;
  if (kind === "length") {
    if (path.endsWith("Uncertainty") || path.startsWith("uncertainties.")) return "reading-error";
    if (path === "port.diameter") return "port";
    return length.get(nameIn(path));
  }
  if (kind === "pressure" && about.strokes) return "stem-pressure";
  if (kind === "rotation" && about.motion === "slow-agitator") return "slow-rotation";
  return others[kind]?.get(nameIn(path)) ?? ofKind[kind];
}

/** The name that says what was measured: `parts[2].height` is a height, `shaft.readings[0]` a shaft. */
function nameIn(path: string): string {
  const plain = path.endsWith("]") ? path.slice(0, path.indexOf("[", path.lastIndexOf(".") + 1)) : path;
  const dot = plain.lastIndexOf(".");
  const last = plain.slice(dot + 1);
  if (last === "readings" || last === "planes") return plain.slice(plain.lastIndexOf(".", dot - 1) + 1, Math.max(dot, 0));
  return last.endsWith("Readings") ? last.slice(0, -"Readings".length) : last;
}

function named(names: Partial<Readonly<Record<PlausibleField, readonly string[]>>>): ByName {
  return new Map(
    Object.entries(names).flatMap(([field, list]) => list.map((name): [string, PlausibleField] => [name, field as PlausibleField])),
  );
}
