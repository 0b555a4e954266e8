/** Where the survey keeps what a part of the plan calls by another name. */
const surveyFields: Readonly<Record<string, string>> = {
  noseLength: "follower.nose",
  glandGap: "follower.gap",
  threadLeft: "studs.threadLeft",
  portFromFace: "port.fromFace",
  portFromThroat: "port.fromThroat",
  portDiameter: "port.diameter",
  window: "lantern.window",
  lanternWidth: "lantern.width",
  ringsThroatSide: "lantern.ringsThroatSide",
  throatBush: "set.throatBush",
  spacer: "set.spacer",
  rings: "set.rings",
  endRings: "set.endRings",
  section: "set.section",
  cut: "set.cut",
  angle: "set.angle",
  glandStress: "set.glandStress",
  seating: "set.seated",
  nuts: "studs.count",
  thread: "studs.thread",
  propertyClass: "studs.propertyClass",
  nutCondition: "studs.nutCondition",
  nutFactor: "studs.nutCondition",
  rotation: "service.rotation",
  stroke: "service.stroke",
  fluids: "service.fluids",
  phase: "service.phase",
  temperature: "service.temperature",
  pH: "service.pH",
  solids: "service.solids",
  use: "service.use",
  pressure: "service.pressure",
  boxPressure: "service.pressure",
  boxPressureGauge: "service.pressure",
  boxHighestGauge: "service.pressure",
  measuredGauge: "service.pressure",
  suction: "service.suction",
  suctionGauge: "service.suction",
  discharge: "service.discharge",
  dischargeGauge: "service.discharge",
  design: "service.impeller",
  impellerDiameter: "service.impellerDiameter",
  supplyGauge: "flush.supply",
  setGauge: "flush.set",
  boxDepth: "depth",
  stem: "shaft",
  rod: "shaft",
};

/** Readings of the condition of a box, as the survey groups them. */
const conditionFields: ReadonlySet<string> = new Set([
  "shaftLift",
  "endFloat",
  "runout",
  "sleeveGroove",
  "finish",
  "boreFinish",
  "followerClearance",
  "throatClearance",
  "hardness",
  "clockGaps",
  "sightings",
  "houseLimits",
  "renewed",
  "critical",
]);

/**
 * The field of the survey that an input of a part came from.
 *
 * Units: none. Range: any name; one that the survey does not know comes back as it is. Source: definition.
 * @example surveyField("noseLength") // "follower.nose"
 */
export function surveyField(input: string): string {
  const named = surveyFields[input];
  if (named !== undefined) return named;
  if (conditionFields.has(input)) return `condition.${input}`;
  for (let at = 1; at < input.length; at++) {
    if (input[at] === "." || input[at] === "[") return conditionFields.has(input.slice(0, at)) ? `condition.${input}` : input;
  }
  return input;
}
