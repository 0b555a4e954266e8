import { isStem, turns } from "../box/index.ts";
import type { Says, Shown } from "../workings/index.ts";
import type { Atmosphere, FluidRow, HardnessScale, Solids } from "./facts.ts";
import { softer } from "./hardness.ts";
import type { Given } from "./judge.ts";
import { kindsOfLimit, shownAs } from "./limit.ts";
import type { Condition, Item, Service, Sleeve } from "./question.ts";
import type { Ready } from "./ready.ts";

/** What is known of the hardness under the packing. */
interface SleeveHardness {
  /** Against the floor that holds for any packing. */
  readonly floor: "below" | "unsure" | "holds" | "unknown";
  /** As measured, or the band usual for its material. */
  readonly measured?: number;
  readonly shown?: Shown;
  readonly scale: HardnessScale;
}

/** A question put in order once, before the styles are gone through. */
export interface Asked {
  readonly ready: Ready;
  readonly service: Service;
  readonly rotating: boolean;
  readonly pressureOf: "turning" | "stroking" | "stem";
  /** Rows of everything that touches the packing, those that the use implies included. */
  readonly fluids: readonly number[];
  /** None when nothing that touches it is known. */
  readonly atmospheres: readonly Atmosphere[];
  readonly conducts: boolean | null;
  readonly steam: boolean;
  readonly gas: boolean | undefined;
  readonly white: boolean;
  readonly solids: Solids | undefined;
  readonly oxygen: boolean;
  readonly potable: boolean;
  readonly food: boolean;
  readonly sleeve: Sleeve;
  readonly hardness: SleeveHardness;
  readonly condition: Condition;
  readonly temperature: Given | undefined;
  readonly pressure: Given | undefined;
  readonly speed: Given | undefined;
  readonly pH: Given | undefined;
  readonly index: { readonly check: number; readonly ask: number };
  readonly items: ReadonlyMap<string, Item>;
  /** Fluids whose row is named for other temperatures than the one given. */
  readonly elsewhere: readonly Says[];
}

const solidsRank: Readonly<Record<Solids, number>> = { none: 0, fibrous: 1, fine: 2, coarse: 3 };

function given(value: number | undefined, of: keyof typeof kindsOfLimit): Given | undefined {
  return value === undefined ? undefined : { value, shown: shownAs(kindsOfLimit[of], value) };
}

function hardnessOf(ready: Ready, sleeve: Sleeve): SleeveHardness {
  const floor = ready.facts.sleeveFloor.value ?? 0;
  const { hardnessScales } = ready.facts;
  if (sleeve.hardness !== undefined) {
    const scale = sleeve.scale ?? "HB";
    const below = softer(sleeve.hardness, scale, floor, "HB", hardnessScales);
    return { floor: below ? "below" : "holds", measured: sleeve.hardness, shown: sleeve.hardness, scale };
  }
  const usual = sleeve.material === undefined ? undefined : ready.sleeves.get(sleeve.material)?.hardness;
  if (!usual || usual.min === null || usual.max === null) return { floor: "unknown", scale: "HB" };
  const least = softer(usual.min, usual.unit, floor, "HB", hardnessScales);
  const most = softer(usual.max, usual.unit, floor, "HB", hardnessScales);
  return { floor: most ? "below" : least ? "unsure" : "holds", scale: usual.unit };
}

/** Rows that the use brings with it, whether or not they were named. */
const impliedFluid = { none: undefined, potable: "potable-water", food: "food-edible", oxygen: "oxygen-gas" } as const;

function rows(ready: Ready, service: Service): number[] {
  const found = new Set<number>();
  for (const fluid of service.fluids ?? []) {
    const index = ready.fluidIndex.get(fluid);
    if (index !== undefined) found.add(index);
  }
  const implied = ready.fluidIndex.get(impliedFluid[service.use ?? "none"] ?? "");
  if (implied !== undefined) found.add(implied);
  return [...found];
}

/** Puts a question in order. Its ids are already those of the files. */
export function putInOrder(ready: Ready, service: Service): Asked {
  const fluids = rows(ready, service);
  const atmospheres = new Set<Atmosphere>();
  let conducts: boolean | null = false;
  let gas = service.phase === undefined ? undefined : service.phase === "gas";
  let white = service.use === "food";
  let solids = service.solids;
  const elsewhere: Says[] = [];
  const named: FluidRow[] = [];
  for (const index of fluids) {
    const row = ready.facts.fluids[index];
    if (!row) continue;
    named.push(row);
    const { nature } = row;
    atmospheres.add(nature.atmosphere);
    if (nature.conducts === true) conducts = true;
    if (service.phase === undefined && nature.phase === "gas") gas = true;
    else if (gas === undefined && nature.phase === "liquid") gas = false;
    white ||= nature.white;
    if (solidsRank[nature.solids] > solidsRank[solids ?? "none"]) solids = nature.solids;
    const { range } = row;
    const t = service.temperature;
    if (range && t !== undefined && (t < (range.min ?? -Infinity) || t > (range.max ?? Infinity))) {
      elsewhere.push({ id: "fluid-row-elsewhere", with: { fluid: row.id, given: { value: t, kind: "temperature", decimals: 0 } } });
    }
  }
  if (conducts === false && named.some(({ nature }) => nature.conducts === null)) conducts = null;
  const { motion } = service;
  const ids = new Set(named.map(({ id }) => id));
  const sleeve = service.sleeve ?? {};
  return {
    ready,
    service,
    rotating: turns(motion),
    pressureOf: isStem(motion) ? "stem" : turns(motion) ? "turning" : "stroking",
    fluids,
    atmospheres: [...atmospheres],
    conducts,
    steam: atmospheres.has("steam"),
    gas,
    white,
    solids: fluids.length === 0 ? service.solids : (solids ?? "none"),
    oxygen: ids.has("oxygen-gas"),
    potable: ids.has("potable-water"),
    food: ids.has("food-edible"),
    sleeve,
    hardness: hardnessOf(ready, sleeve),
    condition: service.condition ?? {},
    temperature: given(service.temperature, "temperature"),
    pressure: given(service.pressure, "pressure"),
    speed: given(service.speed, "speed"),
    pH: given(service.pH, "ph"),
    index: { check: service.index?.check ?? ready.facts.index.check, ask: service.index?.ask ?? ready.facts.index.ask },
    items: new Map((service.items ?? []).map((item) => [item.style, item])),
    elsewhere,
  };
}
