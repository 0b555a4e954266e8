import { notWithin, outside, type Range, type Refused, refuse } from "../workings/index.ts";
import type { Item, Service } from "./question.ts";
import { type Ready, spelt } from "./ready.ts";

/** Refuses an id that the facts do not have, with those that they do. */
function unknownId(input: string, given: string, allowed: Iterable<string>): Refused {
  return refuse({ kind: "not-known", input, given, allowed: [...allowed], says: { id: "material-id-not-known", with: { input, given } } });
}

const temperatures: Range = { min: 1, max: 4000 };
const pressures: Range = { min: -1.1e5, max: 1e9 };
const speeds: Range = { min: 0, max: 300 };
const acidities: Range = { min: -2, max: 16 };
const hardnesses: Range = { min: 1, max: 5000 };
const gaps: Range = { min: 0, max: 1 };
const shares: Range = { min: 0, max: 100 };

function numbersOutside(service: Service): Refused | undefined {
  const { temperature, pressure, speed, pH, sleeve, condition, index } = service;
  return (
    notWithin("temperature", temperature ?? 300, temperatures, "K") ??
    notWithin("pressure", pressure ?? 0, pressures, "Pa") ??
    notWithin("speed", speed ?? 0, speeds, "m/s") ??
    notWithin("pH", pH ?? 7, acidities, "1") ??
    notWithin("sleeve.hardness", sleeve?.hardness ?? 250, hardnesses, "1") ??
    notWithin("condition.throatGap", condition?.throatGap ?? 0, gaps, "m") ??
    notWithin("condition.followerGap", condition?.followerGap ?? 0, gaps, "m") ??
    notWithin("index.check", index?.check ?? 1, shares, "1") ??
    notWithin("index.ask", index?.ask ?? 1, shares, "1")
  );
}

function itemOutside(item: Item, at: string): Refused | undefined {
  return outside([
    [`${at}.temperature`, item.temperature ?? 300, { min: 1, max: 4000 }, "K"],
    [`${at}.pressure`, item.pressure ?? 0, { min: 0, max: 1e9 }, "Pa"],
    [`${at}.speed`, item.speed ?? 0, { min: 0, max: 300 }, "m/s"],
    [`${at}.pHMin`, item.pHMin ?? 7, { min: -2, max: 16 }, "1"],
    [`${at}.pHMax`, item.pHMax ?? 7, { min: -2, max: 16 }, "1"],
  ]);
}

/** The question with every id as the files spell it, or a refusal that names the first that is not there. */
export function readService(service: Service, made: Ready): Service | Refused {
  const outsideOf = numbersOutside(service);
  if (outsideOf) return outsideOf;
  const find = (id: string, among: { has(id: string): boolean }) => (among.has(id) ? id : among.has(spelt(id)) ? spelt(id) : undefined);
  const fluids: string[] = [];
  for (const [at, fluid] of (service.fluids ?? []).entries()) {
    const id = find(fluid, made.fluidIndex);
    if (id === undefined) return unknownId(`fluids[${at}]`, fluid, made.fluidIndex.keys());
    fluids.push(id);
  }
  const { sleeve } = service;
  const material = sleeve?.material === undefined ? undefined : find(sleeve.material, made.sleeves);
  if (sleeve?.material !== undefined && material === undefined) return unknownId("sleeve.material", sleeve.material, made.sleeves.keys());
  const items: Item[] = [];
  for (const [at, item] of (service.items ?? []).entries()) {
    const style = find(item.style, made.byId);
    if (style === undefined) return unknownId(`items[${at}].style`, item.style, made.byId.keys());
    const jacket = item.jacket === undefined ? undefined : find(item.jacket, made.byId);
    if (item.jacket !== undefined && jacket === undefined) return unknownId(`items[${at}].jacket`, item.jacket, made.byId.keys());
    const rubber = item.rubber === undefined ? undefined : find(item.rubber, made.rubbers);
    if (item.rubber !== undefined && rubber === undefined) return unknownId(`items[${at}].rubber`, item.rubber, made.rubbers.keys());
    const lubricant = item.lubricant === undefined || item.lubricant === "none" ? item.lubricant : find(item.lubricant, made.lubricants);
    if (item.lubricant !== undefined && lubricant === undefined) {
      return unknownId(`items[${at}].lubricant`, item.lubricant, ["none", ...made.lubricants.keys()]);
    }
    const suits: string[] = [];
    for (const [n, fluid] of (item.suits ?? []).entries()) {
      const id = find(fluid, made.fluidIndex);
      if (id === undefined) return unknownId(`items[${at}].suits[${n}]`, fluid, made.fluidIndex.keys());
      suits.push(id);
    }
    const refused = itemOutside(item, `items[${at}]`);
    if (refused) return refused;
    items.push({
      ...item,
      style,
      suits,
      ...(jacket === undefined ? {} : { jacket }),
      ...(lubricant === undefined ? {} : { lubricant }),
      ...(rubber === undefined ? {} : { rubber }),
    });
  }
  const asSpelt = material === sleeve?.material && fluids.every((fluid, at) => fluid === service.fluids?.[at]);
  if (asSpelt && items.length === 0) return service;
  return {
    ...service,
    ...(service.fluids ? { fluids } : {}),
    ...(sleeve && material !== undefined ? { sleeve: { ...sleeve, material } } : {}),
    items,
  };
}
