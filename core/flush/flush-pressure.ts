import type { SourceId } from "../sources/index.ts";
import { type GaugePressure, type PressureDifference, quantity } from "../units/index.ts";
import { type Answer, type Band, band, begin, outside, refuse, type Workings } from "../workings/index.ts";
import {
  aboveRule,
  type FlushPressureFacts,
  type FlushPressureRule,
  type FlushReference,
  type FlushService,
  flushServices,
  marginRule,
  settingHigh,
  settingLow,
} from "./flush-rules.ts";
import { warnOfSetting } from "./flush-setting.ts";

export const flushRemedies = [
  "measure-box-pressure",
  "lower-box-pressure",
  "boost-flush",
  "flush-from-discharge",
  "other-arrangement",
] as const;
type FlushRemedy = (typeof flushRemedies)[number];

/** What one source asks for. */
interface FlushOpinion {
  readonly source: SourceId;
  readonly above: FlushReference;
  readonly margin: Band<PressureDifference>;
  /** None where the pressure it refers to is not known. */
  readonly setting?: Band<GaugePressure>;
}

export interface FlushPressure {
  /** Flush pressure at the lantern ring. */
  readonly setting: Band<GaugePressure>;
  /** The same above the highest box pressure. */
  readonly margin: Band<PressureDifference>;
  readonly rules: readonly FlushOpinion[];
  /** Whether the plant's supply gets there; `uncertain` where it hangs on the true box pressure. */
  readonly reaches?: "yes" | "uncertain" | "no";
  /** What to do when it does not, nearest first. */
  readonly remedies: readonly FlushRemedy[];
  readonly present?: "below-box" | "thin" | "right" | "high";
}

export interface FlushPressureGiven {
  readonly service: FlushService;
  readonly boxPressureGauge: GaugePressure;
  readonly boxHighestGauge?: GaugePressure;
  readonly suctionGauge?: GaugePressure;
  readonly dischargeGauge?: GaugePressure;
  readonly supplyGauge?: GaugePressure;
  readonly setGauge?: GaugePressure;
}

const range = { min: quantity("pressure", -1.1, "bar"), max: quantity("pressure", 1000, "bar") };

/**
 * What pressure the flush at the lantern ring should have: a margin above the
 * highest likely pressure at the bottom of the box, and in vacuum service also
 * above the atmosphere. What other sources print, above suction or discharge,
 * stands beside it. A present setting is judged and the usual mistakes named;
 * a supply that cannot get there brings what to do instead.
 *
 *   p_f = p_b,high + m
 *
 * Units: gauge pressures Pa, margins Pa.
 * Range: −1.1 to 1000 bar, refused outside; a highest box pressure below the usual one is refused as impossible.
 * Source: data/limits/flush-pressure.json, each rule with its own.
 * @example flushPressure({ service: "clean", boxPressureGauge: quantity("pressure", 1.1, "bar") }, facts) // 2.1 to 3.2 bar
 */
export function flushPressure(given: FlushPressureGiven, facts: FlushPressureFacts): Answer<FlushPressure> {
  const { service, boxPressureGauge, boxHighestGauge = boxPressureGauge, suctionGauge, dischargeGauge, supplyGauge, setGauge } = given;
  const refused = outside([
    ["boxPressureGauge", boxPressureGauge, range, "Pa"],
    ["boxHighestGauge", boxHighestGauge, range, "Pa"],
    ["suctionGauge", suctionGauge ?? 0, range, "Pa"],
    ["dischargeGauge", dischargeGauge ?? 0, range, "Pa"],
    ["supplyGauge", supplyGauge ?? 0, range, "Pa"],
    ["setGauge", setGauge ?? 0, range, "Pa"],
  ]);
  if (refused) return refused;
  if (!flushServices.includes(service)) {
    return refuse({ kind: "not-known", input: "service", given: service, allowed: flushServices, says: { id: "flush-service-unknown" } });
  }
  if (boxHighestGauge < boxPressureGauge) {
    return refuse({
      kind: "impossible",
      input: "boxHighestGauge",
      given: boxHighestGauge,
      allowed: { min: boxPressureGauge, unit: "Pa" },
      says: { id: "box-highest-below-usual", with: { usual: { value: boxPressureGauge, kind: "pressure" } } },
    });
  }
  const work = begin();
  const references: Readonly<Record<FlushReference, GaugePressure | undefined>> = {
    box: boxHighestGauge,
    atmosphere: 0 as GaugePressure,
    suction: suctionGauge,
    discharge: dischargeGauge,
  };
  const rules: FlushOpinion[] = [];
  let [overBoxLow, overBoxHigh, overAtmosphereLow, overAtmosphereHigh] = [Infinity, -Infinity, 0, 0];
  for (const entry of facts.rules) {
    if (!entry.services.includes(service)) continue;
    const printed = opinion(work, entry, references[entry.above]);
    const { setting } = printed;
    rules.push(printed);
    if (entry.use !== "set" || !setting) continue;
    if (entry.above === "box") {
      overBoxLow = Math.min(overBoxLow, setting.low);
      overBoxHigh = Math.max(overBoxHigh, setting.high);
    } else {
      overAtmosphereLow = Math.max(overAtmosphereLow, setting.low);
      overAtmosphereHigh = Math.max(overAtmosphereHigh, setting.high);
    }
  }
  const low = work.step(settingLow, [overBoxLow, overAtmosphereLow], Math.max(overBoxLow, overAtmosphereLow) as GaugePressure);
  const high = work.step(settingHigh, [overBoxHigh, overAtmosphereHigh], Math.max(overBoxHigh, overAtmosphereHigh) as GaugePressure);
  const margin = band(
    work.step(marginRule, [low, boxHighestGauge], (low - boxHighestGauge) as PressureDifference),
    work.step(marginRule, [high, boxHighestGauge], (high - boxHighestGauge) as PressureDifference),
  );
  const setting = { low, high };
  const present = warnOfSetting(work, given, boxHighestGauge, setting);
  return work.found<FlushPressure>({
    setting,
    margin,
    rules,
    ...reach(work, given, setting, boxHighestGauge - boxPressureGauge),
    ...(present ? { present } : {}),
  });
}

function opinion(work: Workings, entry: FlushPressureRule, reference: GaugePressure | undefined): FlushOpinion {
  const margin = { low: entry.low, high: entry.high };
  const { source } = entry.citation;
  if (reference === undefined) return { source, above: entry.above, margin };
  const rule = aboveRule(entry.above, entry.citation);
  const at = (m: PressureDifference) => work.step(rule, [reference, m], (reference + m) as GaugePressure);
  return { source, above: entry.above, margin, setting: { low: at(margin.low), high: at(margin.high) } };
}

/** Whether the supply gets to the setting; a box pressure that is an estimate may yet turn out low enough. */
function reach(
  work: Workings,
  { supplyGauge, service }: FlushPressureGiven,
  setting: Band<GaugePressure>,
  doubt: number,
): Pick<FlushPressure, "reaches" | "remedies"> {
  if (supplyGauge === undefined) return { remedies: [] };
  if (supplyGauge >= setting.low) return { reaches: "yes", remedies: [] };
  const shown = { supply: { value: supplyGauge, kind: "pressure" }, needed: { value: setting.low, kind: "pressure" } };
  if (supplyGauge >= setting.low - doubt) {
    work.warn({ kind: "limit", input: "supplyGauge", given: supplyGauge, says: { id: "flush-supply-uncertain", with: shown } });
    return { reaches: "uncertain", remedies: ["measure-box-pressure", "lower-box-pressure", "boost-flush"] };
  }
  work.warn({ kind: "limit", input: "supplyGauge", given: supplyGauge, says: { id: "flush-supply-too-low", with: shown } });
  const remedies: readonly FlushRemedy[] = [
    "measure-box-pressure",
    "lower-box-pressure",
    "boost-flush",
    "flush-from-discharge",
    "other-arrangement",
  ];
  return { reaches: "no", remedies: service === "clean" ? remedies : remedies.filter((remedy) => remedy !== "flush-from-discharge") };
}
