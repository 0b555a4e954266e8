import { saturationTemperature, water } from "../fluid/index.ts";
import { absolutePressure } from "../flush/index.ts";
import type { AbsolutePressure, Density, GaugePressure, HeatCapacity, Temperature } from "../units/index.ts";
import { type Refused, refuse, rule, type Workings } from "../workings/index.ts";

/** What is known of the liquid that carries heat away. Density and heat capacity left out: water. */
export interface CarryingLiquid {
  readonly temperature: Temperature;
  readonly boxPressureGauge?: GaugePressure;
  readonly atmosphereAbsolute?: AbsolutePressure;
  readonly density?: Density;
  readonly heatCapacity?: HeatCapacity;
}

interface Carried {
  /** Heat a cubic metre takes up for each kelvin, J/(m3 K). */
  readonly perVolume: number;
  /** Where it boils; not known for another liquid than water, or above the critical pressure. */
  readonly boils?: Temperature;
}

const atmosphericTaken = rule({
  id: "pressure-taken-atmospheric",
  name: "boxPressureGauge",
  symbol: "p",
  expression: "atmospheric, taken for lack of word of the pressure",
  unit: "Pa",
  inputs: [],
  citation: { source: "own-proposal", at: "the careful end: water boils soonest there, vacuum apart" },
  assumed: { min: 0, max: 1e6 },
});

const perVolumeRule = rule({
  id: "heat-capacity-of-volume",
  symbol: "ρ·cp",
  expression: "ρ · cp",
  unit: "J/(m3*K)",
  inputs: [
    { symbol: "ρ", name: "density", unit: "kg/m3" },
    { symbol: "cp", name: "heat-capacity", unit: "J/(kg*K)" },
  ],
  citation: { source: "definition" },
});

/** Of all that is worked out of water, what is used here. */
const used: ReadonlySet<string> = new Set(["density", "heat-capacity", "saturation-temperature"]);

const temperatureText = (value: number) => ({ value, kind: "temperature" });

/** What a volume of the liquid carries for each kelvin, and where it would boil. */
export function carriedHeat(work: Workings, given: CarryingLiquid): Carried | Refused {
  const { temperature, density, heatCapacity } = given;
  if (density !== undefined && heatCapacity !== undefined) {
    work.warn({ kind: "gap", input: "density", says: { id: "boiling-not-looked-at" } });
    return { perVolume: work.step(perVolumeRule, [density, heatCapacity], density * heatCapacity) };
  }
  if (density !== undefined || heatCapacity !== undefined) {
    return refuse({
      kind: "not-known",
      input: density === undefined ? "density" : "heatCapacity",
      says: { id: "density-and-heat-capacity" },
    });
  }
  const gauge = given.boxPressureGauge ?? work.assume(atmosphericTaken, 0 as GaugePressure);
  const pressure = absolutePressure(work, gauge, given.atmosphereAbsolute);
  const found = water({ temperature, pressure });
  if (!found.ok) return found;
  const liquid = work.take(found, ([{ id, name }]) => used.has(name ?? id));
  if (liquid.phase !== "liquid") {
    const says = {
      id: "liquid-already-boiling",
      with: { temperature: temperatureText(temperature), pressure: { value: pressure, kind: "absolute-pressure" } },
    };
    return refuse({ kind: "impossible", input: "temperature", given: temperature, says });
  }
  const boils = saturationTemperature(pressure);
  const perVolume = work.step(perVolumeRule, [liquid.density, liquid.heatCapacity], liquid.density * liquid.heatCapacity);
  return Number.isFinite(boils) ? { perVolume, boils } : { perVolume };
}
