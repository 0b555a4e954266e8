import { saturationTemperature, waterState } from "../fluid/index.ts";
import {
  type AbsolutePressure,
  type Density,
  type PressureDifference,
  quantity,
  type Temperature,
  type Viscosity,
} from "../units/index.ts";
import { rule, type Workings } from "../workings/index.ts";

const room = quantity("temperature", 20, "degC");
const standardAtmosphere = quantity("absolute-pressure", 101325, "Pa");

/** Density of water at 20 °C. */
export const waterDensity = waterState(room, standardAtmosphere)?.density ?? (Number.NaN as Density);

const atmosphereRule = rule({
  id: "atmosphere-assumed",
  name: "atmosphere",
  symbol: "pa",
  expression: "standard atmosphere",
  unit: "Pa",
  inputs: [],
  citation: { source: "definition", at: "101 325 Pa" },
  assumed: { min: quantity("absolute-pressure", 0.8, "bar"), max: quantity("absolute-pressure", 1.04, "bar") },
});

const temperatureRule = rule({
  id: "leak-temperature-assumed",
  name: "temperature",
  symbol: "T",
  expression: "20 °C",
  unit: "K",
  inputs: [],
  citation: { source: "own-proposal" },
  assumed: { min: quantity("temperature", 0, "degC"), max: quantity("temperature", 100, "degC") },
});

const viscosityRule = rule({
  id: "leak-water-viscosity",
  name: "viscosity",
  symbol: "η",
  expression: "water at T and pa + Δp",
  unit: "Pa*s",
  inputs: [
    { symbol: "T", name: "temperature", unit: "K" },
    { symbol: "pa", name: "atmosphere", unit: "Pa" },
    { symbol: "Δp", name: "pressure-drop", unit: "Pa" },
  ],
  citation: { source: "iapws-r12-08", at: "with the density of IAPWS R7-97" },
});

const flashing = { source: "iapws-r7-97", at: "region 4: it boils at less than this outside the box" } as const;

/** The temperature given, or 20 °C as a stated assumption. */
export function temperatureOr20(work: Workings, temperature: Temperature | undefined): Temperature {
  return temperature ?? work.assume(temperatureRule, room);
}

/** Viscosity of water under a pressure drop above the atmosphere, or `undefined` where it is not liquid there. */
export function filmViscosity(work: Workings, temperature: Temperature, pressureDrop: PressureDifference): Viscosity | undefined {
  const outer = work.assume(atmosphereRule, standardAtmosphere);
  const state = waterState(temperature, (outer + pressureDrop) as AbsolutePressure);
  if (state?.phase !== "liquid") return undefined;
  if (temperature > saturationTemperature(outer)) {
    const says = { id: "leak-flashes", with: { temperature: { value: temperature, kind: "temperature" } } };
    work.warn({ kind: "outside-validity", input: "temperature", given: temperature, says, citation: flashing });
  }
  return work.step(viscosityRule, [temperature, outer, pressureDrop], state.viscosity);
}
