import { turns } from "../box/index.ts";
import { surfaceSpeed } from "../heat/index.ts";
import { type Condition, type Materials, materials, type Sleeve, type StyleFacts, styleFacts } from "../materials/index.ts";
import type { GaugePressure, Speed } from "../units/index.ts";
import type { Filling } from "../workings/index.ts";
import type { MeasuredBox } from "./measure.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Survey } from "./survey.ts";

/** How fast the shaft runs, and what to pack it with. */
export interface Chosen {
  readonly speed: Part<{ readonly speed: Speed }> | undefined;
  readonly materials: Part<Materials>;
  /** The style that the rest of the plan reckons with: the one asked for, else the first in rank. */
  readonly style: Part<StyleFacts>;
  readonly asked: boolean;
}

/** Ranks the packings for this service and settles which one the plan reckons with. */
export function choosePacking(survey: Survey, box: MeasuredBox, pressure: GaugePressure | undefined, facts: PlanFacts): Chosen {
  const { motion, release, service = {}, set = {} } = survey;
  const shaft = answerOf(box.shaft)?.mean.mean;
  const speed: Chosen["speed"] = turns(motion)
    ? when({ shaft, "service.rotation": service.rotation }, (known) =>
        surfaceSpeed({ shaft: known.shaft, rotation: known["service.rotation"] }),
      )
    : undefined;
  const given: GivenTo<typeof materials> = { motion, sleeve: sleeveOf(survey), condition: conditionOf(survey, box) };
  if (release !== undefined && release !== "unknown") given.release = release;
  if (service.fluids !== undefined) given.fluids = service.fluids;
  if (service.temperature !== undefined) given.temperature = service.temperature;
  if (service.pH !== undefined) given.pH = service.pH;
  if (service.solids !== undefined) given.solids = service.solids;
  if (service.phase !== undefined) given.phase = service.phase;
  if (service.use !== undefined) given.use = service.use;
  if (pressure !== undefined) given.pressure = pressure;
  const running = answerOf(speed)?.speed;
  if (running !== undefined) given.speed = running;
  if (release === "not-allowed" && survey.flush?.fitted) given.film = "flush-to-closed-drain";
  const ranked = materials(given, facts.materials);
  const first = set.style ?? answerOf(ranked)?.ranked[0]?.style;
  return {
    speed,
    materials: ranked,
    style: when({ "set.style": first }, (known) => styleFacts(known["set.style"], facts.materials)),
    asked: set.style !== undefined,
  };
}

function sleeveOf({ service = {}, condition = {} }: Survey): Sleeve {
  const sleeve: Filling<Sleeve> = {};
  if (service.sleeve !== undefined) sleeve.material = service.sleeve;
  if (condition.hardness !== undefined) sleeve.hardness = condition.hardness;
  return sleeve;
}

function conditionOf({ condition = {} }: Survey, box: MeasuredBox): Condition {
  const found: Filling<Condition> = {};
  const overall = overallOf(box);
  if (overall !== undefined) found.overall = overall;
  if (condition.throatClearance !== undefined) found.throatGap = condition.throatClearance;
  if (condition.followerClearance !== undefined) found.followerGap = condition.followerClearance;
  return found;
}

/** The gravest verdict on the box, as far as choosing a packing minds it. */
function overallOf(box: MeasuredBox): "good" | "worn" | "poor" | undefined {
  const overall = answerOf(box.condition)?.overall;
  if (overall === "good") return "good";
  if (overall === "attend") return "worn";
  return overall === "renew" ? "poor" : undefined;
}
