import { atmosphereRange } from "../flush/index.ts";
import type { Power, Temperature, TemperatureDifference, VolumeFlow } from "../units/index.ts";
import { type Answer, begin, outside, refuse, rule } from "../workings/index.ts";
import { type CarryingLiquid, carriedHeat } from "./carried-heat.ts";

const outletRule = rule({
  id: "flush-outlet",
  symbol: "T_out",
  expression: "T + ΔT",
  unit: "K",
  inputs: [
    { symbol: "T", name: "temperature", unit: "K" },
    { symbol: "ΔT", name: "rise", unit: "K" },
  ],
  citation: { source: "definition" },
});

const flowRule = rule({
  id: "flush-flow",
  symbol: "Q",
  expression: "P / (ρ·cp · ΔT)",
  unit: "m3/s",
  inputs: [
    { symbol: "P", name: "power", unit: "W" },
    { symbol: "ρ·cp", name: "heat-capacity-of-volume", unit: "J/(m3*K)" },
    { symbol: "ΔT", name: "rise", unit: "K" },
  ],
  citation: { source: "mechanics", at: "heat balance; liquid as it flows in" },
});

/** Limits of what carries heat, the same wherever it is asked for. */
export const liquidLimits = {
  pressure: { min: -1.1e5, max: 1e8 },
  density: { min: 100, max: 20000 },
  heatCapacity: { min: 100, max: 20000 },
  temperature: { min: 1, max: 2000 },
} as const;

/**
 * Flush that carries a power away for a chosen rise in its temperature. For
 * sizing a flush, never a drip. Water unless density and heat capacity are given.
 *
 *   Q = P / (ρ cp ΔT), with ρ and cp as the liquid flows in
 *
 * Units: P W, ΔT K, T K, Q m3/s.
 * Range: power 0 to 10 MW, rise 0.01 to 500 K, water 0 °C to boiling; refused outside. A rise that
 * would bring water to the boil at the box pressure (left out: atmospheric) is refused as impossible.
 * Source: heat balance, derived here; water by IAPWS R7-97.
 * @example flushFlow({ power: quantity("power", 323.3, "W"), rise: quantity("temperature-difference", 20, "K"), temperature: quantity("temperature", 20, "degC") }) // 0.232 L/min
 */
export function flushFlow(given: CarryingLiquid & { readonly power: Power; readonly rise: TemperatureDifference }): Answer<{
  readonly flow: VolumeFlow;
  readonly outletTemperature: Temperature;
}> {
  const { power, rise, temperature } = given;
  const refused = outside([
    ["power", power, { min: 0, max: 1e7 }, "W"],
    ["rise", rise, { min: 0.01, max: 500 }, "K"],
    ["temperature", temperature, liquidLimits.temperature, "K"],
    ["boxPressureGauge", given.boxPressureGauge ?? 0, liquidLimits.pressure, "Pa"],
    ["atmosphereAbsolute", given.atmosphereAbsolute ?? atmosphereRange.max, atmosphereRange, "Pa"],
    ["density", given.density ?? 1000, liquidLimits.density, "kg/m3"],
    ["heatCapacity", given.heatCapacity ?? 4000, liquidLimits.heatCapacity, "J/(kg*K)"],
  ]);
  if (refused) return refused;
  const work = begin();
  const liquid = carriedHeat(work, given);
  if ("ok" in liquid) return liquid;
  const outletTemperature = work.step(outletRule, [temperature, rise], (temperature + rise) as Temperature);
  if (liquid.boils !== undefined && outletTemperature >= liquid.boils) {
    return refuse({
      kind: "impossible",
      input: "rise",
      given: rise,
      allowed: { max: liquid.boils - temperature, unit: "K" },
      says: {
        id: "flush-would-boil",
        with: { boils: { value: liquid.boils, kind: "temperature" }, outlet: { value: outletTemperature, kind: "temperature" } },
      },
    });
  }
  const flow = work.step(flowRule, [power, liquid.perVolume, rise], (power / (liquid.perVolume * rise)) as VolumeFlow);
  return work.found({ flow, outletTemperature });
}
