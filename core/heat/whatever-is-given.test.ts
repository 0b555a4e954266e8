import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect, test } from "vitest";
import { anyGiven, expectFinite } from "../../testing/any-given.ts";
import { property } from "../../testing/property.ts";
import { clearanceFromLeak } from "../leak/index.ts";
import { quantity } from "../units/index.ts";
import { flushFlow, frictionPower, heatSplit, pressureSpeed, thermalGrowth } from "./index.ts";

const liquid = ["boxPressureGauge", "atmosphereAbsolute", "density", "heatCapacity"];
const { heat } = readAllFacts();

property(
  "friction power answers or refuses, whatever is given, and never with a number that is none",
  [
    anyGiven(
      ["shaft", "bore", "packedLength", "glandStress", "rotation"],
      ["ratio", "frictionBore", "frictionRunning", "clearance", "viscosity"],
    ),
  ],
  (given) => expectFinite(frictionPower(given as never)),
  "fuzz",
);
property(
  "so does flush flow",
  [anyGiven(["power", "rise", "temperature"], liquid)],
  (given) => expectFinite(flushFlow(given as never)),
  "fuzz",
);
property(
  "so does the split of heat",
  [anyGiven(["power", "drip", "rise", "shaft", "temperature"], ["wallConductance", ...liquid])],
  (given) => expectFinite(heatSplit(given as never)),
  "fuzz",
);
property(
  "so does growth",
  [anyGiven(["packedLength", "from", "to"], ["poisson", "pitch"]), fc.constantFrom("ptfe", "flexible-graphite")],
  (given, packing) => expectFinite(thermalGrowth({ ...given, packing } as never, heat)),
  "fuzz",
);
property(
  "so does pressure times speed",
  [anyGiven(["boxPressureGauge", "speed"])],
  (given) => expectFinite(pressureSpeed(given as never)),
  "fuzz",
);

test("from a timed catch to the film bound: 2, 3, 10 and 60 mL/min at 3 bar leave 15, 13, 9 and 5 W", () => {
  const shaft = quantity("length", 50, "mm");
  const viscosity = quantity("viscosity", 1.0016, "mPa*s");
  for (const [leak, micrometres, watts] of [
    [2, 7.5, 15.1],
    [3, 8.6, 13.2],
    [10, 12.9, 8.8],
    [60, 23.4, 4.9],
  ] as const) {
    const found = clearanceFromLeak({
      diameter: shaft,
      flow: quantity("flow", leak, "mL/min"),
      length: shaft,
      pressureDrop: quantity("pressure-difference", 3, "bar"),
      viscosity,
      eccentricity: 0,
    });
    if (!found.ok) throw new Error("no clearance");
    expect(found.value.clearance * 1e6).toBeCloseTo(micrometres, 1);
    const power = frictionPower({
      shaft,
      bore: quantity("length", 70, "mm"),
      packedLength: shaft,
      glandStress: quantity("stress", 0.5, "MPa"),
      rotation: quantity("rotation", 1450, "rpm"),
      clearance: found.value.clearance,
      viscosity,
    });
    expect(power.ok && power.value.film).toBeCloseTo(watts, 1);
  }
});
