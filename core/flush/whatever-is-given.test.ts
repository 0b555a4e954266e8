import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";
import { expect } from "vitest";
import { anyGiven, expectFinite } from "../../testing/any-given.ts";
import { property } from "../../testing/property.ts";
import { inUnit, quantity } from "../units/index.ts";
import {
  airIngress,
  boxDesigns,
  boxPressure,
  flushPressure,
  flushServices,
  impellerDiameters,
  lanternFlow,
  throatFlow,
  vapourMargin,
} from "./index.ts";

const facts = readAllFacts().flush;

property(
  "box pressure answers or refuses, whatever is given, and never with a number that is none",
  [
    anyGiven([], ["suction", "discharge", "measuredGauge", "gaugeError"]),
    fc.constantFrom(...boxDesigns),
    fc.constantFrom(...impellerDiameters),
  ],
  (given, design, impellerDiameter) => expectFinite(boxPressure({ ...given, design, impellerDiameter } as never, facts.boxPressure)),
  "fuzz",
);
property(
  "so does flush pressure",
  [
    anyGiven(["boxPressureGauge"], ["boxHighestGauge", "suctionGauge", "dischargeGauge", "supplyGauge", "setGauge"]),
    fc.constantFrom(...flushServices),
  ],
  (given, service) => expectFinite(flushPressure({ ...given, service } as never, facts.flushPressure)),
  "fuzz",
);
property(
  "so does air ingress",
  [anyGiven(["boxPressureGauge"], ["boxLowestGauge", "suctionGauge"])],
  (given) => expectFinite(airIngress(given as never)),
  "fuzz",
);
property(
  "so does the margin to vapour",
  [anyGiven(["boxPressureGauge", "temperature"], ["rise", "atmosphereAbsolute", "vapourAbsolute"])],
  (given) => expectFinite(vapourMargin(given as never)),
  "fuzz",
);
property(
  "so does the flow at the lantern ring",
  [
    anyGiven(
      ["shaft", "flushGauge", "boxPressureGauge", "viscosity", "throatClearance", "throatLength", "glandClearance", "glandLength"],
      ["density"],
    ),
  ],
  (given) => expectFinite(lanternFlow(given as never)),
  "fuzz",
);
property(
  "so does the flow at the throat",
  [anyGiven(["shaft", "section"], ["clearance", "length", "pressureDrop", "temperature", "viscosity", "density"])],
  (given) => expectFinite(throatFlow(given as never)),
  "fuzz",
);

const gauge = fc.double({ min: 0, max: 50, noNaN: true });
property(
  "read in psi or in bar, it is the same box and the same flush",
  [gauge, gauge, fc.constantFrom(...flushServices)],
  (suction, more, service) => {
    const asPsi = (bar: number) => quantity("pressure", inUnit("pressure", quantity("pressure", bar, "bar"), "psi"), "psi");
    const inBar = (bar: number) => quantity("pressure", bar, "bar");
    const chain = (as: typeof asPsi) => {
      const box = boxPressure({ suction: as(suction), discharge: as(suction + more), design: "back-vanes" }, facts.boxPressure);
      if (!box.ok) throw new Error("refused");
      const flush = flushPressure(
        { service, boxPressureGauge: box.value.typical, boxHighestGauge: box.value.band.high },
        facts.flushPressure,
      );
      if (!flush.ok) throw new Error("refused");
      return flush.value.setting;
    };
    expect(chain(asPsi).low / chain(inBar).low).toBeCloseTo(1, 11);
    expect(chain(asPsi).high / chain(inBar).high).toBeCloseTo(1, 11);
  },
);
