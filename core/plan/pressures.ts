import { isStem } from "../box/index.ts";
import {
  type AirIngress,
  airIngress,
  type BoxPressure,
  boxPressure,
  type FlushPressure,
  type FlushService,
  flushPressure,
  type VapourMargin,
  vapourMargin,
} from "../flush/index.ts";
import type { GaugePressure } from "../units/index.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Survey } from "./survey.ts";

/** What presses on the set from inside, and what that asks of the flush. */
export interface Pressures {
  readonly box: Part<BoxPressure>;
  /** At the bottom of the set: by gauge, else by the pump's design. */
  readonly atSet: GaugePressure | undefined;
  readonly flush: Part<FlushPressure> | undefined;
  readonly vapour: Part<VapourMargin> | undefined;
  readonly air: Part<AirIngress> | undefined;
}

/** Works out the pressures of a pump's box; a stem or rod knows only its line pressure. */
export function pressuresOf(survey: Survey, facts: PlanFacts): Pressures {
  const { motion, service = {}, flush = {} } = survey;
  const turning = motion === "turning";
  const box: Part<BoxPressure> = turning
    ? boxOfPump(survey, facts)
    : { ok: false, needs: service.pressure === undefined ? ["service.pressure"] : [] };
  const found = answerOf(box);
  const atSet = turning ? found?.typical : service.pressure;
  if (!turning || isStem(motion)) return { box, atSet, flush: undefined, vapour: undefined, air: undefined };
  const kind = flush.kind ?? flushServiceOf(survey);
  return {
    box,
    atSet,
    flush:
      flush.fitted === false
        ? undefined
        : when({ "service.pressure": found }, (known) => {
            const given: GivenTo<typeof flushPressure> = {
              service: kind,
              boxPressureGauge: known["service.pressure"].typical,
              boxHighestGauge: known["service.pressure"].band.high,
            };
            if (service.suction !== undefined) given.suctionGauge = service.suction;
            if (service.discharge !== undefined) given.dischargeGauge = service.discharge;
            if (flush.supply !== undefined) given.supplyGauge = flush.supply;
            if (flush.set !== undefined) given.setGauge = flush.set;
            return flushPressure(given, facts.flush.flushPressure);
          }),
    vapour: when({ "service.pressure": found, "service.temperature": service.temperature }, (known) =>
      vapourMargin({ boxPressureGauge: known["service.pressure"].band.low, temperature: known["service.temperature"] }),
    ),
    air: when({ "service.pressure": found }, (known) => {
      const { typical, band } = known["service.pressure"];
      const given: GivenTo<typeof airIngress> = { boxPressureGauge: typical, boxLowestGauge: band.low };
      if (service.suction !== undefined) given.suctionGauge = service.suction;
      return airIngress(given);
    }),
  };
}

function boxOfPump({ service = {} }: Survey, facts: PlanFacts): Part<BoxPressure> {
  const { suction, discharge, pressure } = service;
  if (pressure === undefined && (suction === undefined || discharge === undefined)) {
    return {
      ok: false,
      needs: [
        "service.pressure",
        ...(suction === undefined ? ["service.suction"] : []),
        ...(discharge === undefined ? ["service.discharge"] : []),
      ],
    };
  }
  const given: GivenTo<typeof boxPressure> = { design: service.impeller ?? "unknown" };
  if (suction !== undefined) given.suction = suction;
  if (discharge !== undefined) given.discharge = discharge;
  if (service.impellerDiameter !== undefined) given.impellerDiameter = service.impellerDiameter;
  if (pressure !== undefined) given.measuredGauge = pressure;
  return boxPressure(given, facts.flush.boxPressure);
}

/** The flush rule that fits the service, when the survey does not name one. */
function flushServiceOf({ service = {} }: Survey): FlushService {
  if (service.solids === "coarse" || service.solids === "fine") return "slurry";
  return (service.suction ?? 0) < 0 ? "vacuum" : "clean";
}
