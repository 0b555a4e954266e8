import type { GaugePressure } from "../units/index.ts";
import type { Band, Workings } from "../workings/index.ts";

/** Judges a present flush setting and names the usual mistakes. */
export function warnOfSetting(
  work: Workings,
  given: {
    readonly setGauge?: GaugePressure;
    readonly suctionGauge?: GaugePressure;
    readonly dischargeGauge?: GaugePressure;
    readonly service: string;
  },
  box: GaugePressure,
  setting: Band<GaugePressure>,
): "below-box" | "thin" | "right" | "high" | undefined {
  const { setGauge, suctionGauge, dischargeGauge } = given;
  const shown = (value: number) => ({ value, kind: "pressure" });
  if (given.service === "slurry") work.warn({ kind: "note", input: "service", says: { id: "flush-sources-differ" } });
  if (setGauge === undefined) {
    if (dischargeGauge !== undefined && dischargeGauge > setting.high) {
      work.warn({
        kind: "note",
        input: "dischargeGauge",
        says: {
          id: "flush-not-against-discharge",
          with: { discharge: shown(dischargeGauge), low: shown(setting.low), high: shown(setting.high) },
        },
        citation: { source: "fsa-flush-pressure" },
      });
    }
    return undefined;
  }
  const about = { kind: "limit", input: "setGauge", given: setGauge } as const;
  const band = { set: shown(setGauge), box: shown(box), low: shown(setting.low), high: shown(setting.high) };
  if (setGauge <= box) {
    work.warn({ ...about, says: { id: "flush-below-box", with: band }, citation: { source: "flow-control-2014" } });
    if (suctionGauge !== undefined && setGauge > suctionGauge) {
      work.warn({ ...about, says: { id: "flush-set-against-suction", with: { ...band, suction: shown(suctionGauge) } } });
    }
    return "below-box";
  }
  if (setGauge < setting.low) {
    work.warn({ ...about, says: { id: "flush-thin", with: band } });
    return "thin";
  }
  if (setGauge <= setting.high) return "right";
  if (dischargeGauge !== undefined && setGauge >= dischargeGauge) {
    work.warn({
      ...about,
      says: { id: "flush-set-against-discharge", with: { ...band, discharge: shown(dischargeGauge) } },
      citation: { source: "fsa-flush-pressure" },
    });
  } else {
    work.warn({ ...about, says: { id: "flush-high", with: band } });
  }
  return "high";
}
