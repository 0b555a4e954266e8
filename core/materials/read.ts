import { type Kind, quantity } from "../units/index.ts";
import type {
  EndRing,
  Figure,
  FluidRow,
  HardnessScales,
  LanternMaterial,
  Lubricant,
  MaterialsFacts,
  PressureSpeedPoint,
  Rubber,
  Saying,
  Selection,
  SleeveMaterial,
  Style,
} from "./facts.ts";

/** The files of data/materials/ as they stand, in the units they name. */
export interface MaterialsFiles {
  readonly styles: unknown;
  readonly lubricants: unknown;
  readonly elastomers: unknown;
  readonly fluids: unknown;
  readonly sleeves: unknown;
  readonly lanternRings: unknown;
  readonly endRings: unknown;
  readonly pressureSpeed: unknown;
  readonly selection: unknown;
}

/** What each unit of the files measures; other units are plain numbers on a scale of their own. */
const kinds: Readonly<Record<string, Kind>> = {
  degC: "temperature",
  bar: "pressure",
  "m/s": "speed",
  "g/cm3": "density",
  MPa: "stress",
  um: "length",
  mm: "length",
};

const converted: ReadonlySet<string> = new Set(["value", "warnAt", "min", "max", "spread"]);

function toSi(member: unknown, kind: Kind, unit: string): unknown {
  if (typeof member === "number") return quantity(kind, member, unit);
  return Array.isArray(member) ? member.map((entry: unknown) => toSi(entry, kind, unit)) : member;
}

/** The same tree with every figure that names a unit in SI. */
function inSi(tree: unknown): unknown {
  if (Array.isArray(tree)) return tree.map(inSi);
  if (typeof tree !== "object" || tree === null) return tree;
  const members = tree as Readonly<Record<string, unknown>>;
  const unit = typeof members.unit === "string" ? members.unit : undefined;
  const kind = unit === undefined ? undefined : kinds[unit];
  const read: Record<string, unknown> = {};
  for (const [name, member] of Object.entries(members)) {
    if (name === "origin") read[name] = member;
    else if (kind && unit !== undefined && converted.has(name)) read[name] = toSi(member, kind, unit);
    else if (name !== "unit" || !kind) read[name] = inSi(member);
  }
  return read;
}

/**
 * Turns the files of data/materials/ into the facts that the answers take.
 * Every figure comes out in SI, converted once, by core/units.
 *
 * Units: in as each figure names (°C, bar, m/s, g/cm³, MPa, µm, mm); out K, Pa, m/s, kg/m³, m.
 * Range: none of its own; a file of another shape is a programming mistake, found by the test that walks the files.
 * Source: each figure carries its own.
 * @example readMaterials(files).styles.length // 25
 */
export function readMaterials(files: MaterialsFiles): MaterialsFacts {
  const read = inSi(files) as {
    readonly styles: { readonly styles: readonly Style[] };
    readonly lubricants: { readonly lubricants: readonly Lubricant[] };
    readonly elastomers: { readonly elastomers: readonly Rubber[] };
    readonly fluids: { readonly chemistries: readonly string[]; readonly fluids: readonly FluidRow[] };
    readonly sleeves: {
      readonly floor: Figure;
      readonly quartz: MaterialsFacts["quartz"];
      readonly sleeves: readonly SleeveMaterial[];
      readonly scales: HardnessScales;
    };
    readonly lanternRings: { readonly practice: Saying; readonly materials: readonly LanternMaterial[] };
    readonly endRings: { readonly throatGap: MaterialsFacts["throatGap"]; readonly materials: readonly EndRing[] };
    readonly pressureSpeed: { readonly points: readonly PressureSpeedPoint[]; readonly index: MaterialsFacts["index"] };
    readonly selection: Selection;
  };
  return {
    styles: read.styles.styles,
    lubricants: read.lubricants.lubricants,
    rubbers: read.elastomers.elastomers,
    chemistries: read.fluids.chemistries,
    fluids: read.fluids.fluids,
    sleeveFloor: read.sleeves.floor,
    quartz: read.sleeves.quartz,
    sleeves: read.sleeves.sleeves,
    hardnessScales: read.sleeves.scales,
    lanternPractice: read.lanternRings.practice,
    lanternMaterials: read.lanternRings.materials,
    throatGap: read.endRings.throatGap,
    endRings: read.endRings.materials,
    pressureSpeed: read.pressureSpeed.points,
    index: read.pressureSpeed.index,
    selection: read.selection,
  };
}
