import { turns } from "../box/index.ts";
import { surfaceSpeed } from "../heat/index.ts";
import { type Materials, materials, type StyleFacts, styleFacts } from "../materials/index.ts";
import type { GaugePressure, Speed } from "../units/index.ts";
import type { MeasuredBox } from "./measure.ts";
import { answerOf, type Part, when } from "./part.ts";
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
  const { motion, release, service = {}, set = {}, condition = {} } = survey;
  const shaft = answerOf(box.shaft)?.mean.mean;
  const speed: Chosen["speed"] = turns(motion)
    ? when({ shaft, "service.rotation": service.rotation }, (known) =>
        surfaceSpeed({ shaft: known.shaft, rotation: known["service.rotation"] }),
      )
    : undefined;
  const running = answerOf(speed)?.speed;
  const overall = overallOf(box);
  const given = {
    motion,
    ...(release === undefined || release === "unknown" ? {} : { release }),
    ...pick(service, ["fluids", "temperature", "pH", "solids", "phase", "use"]),
    ...(pressure === undefined ? {} : { pressure }),
    ...(running === undefined ? {} : { speed: running }),
    ...(release === "not-allowed" && survey.flush?.fitted ? { film: "flush-to-closed-drain" as const } : {}),
    sleeve: {
      ...(service.sleeve === undefined ? {} : { material: service.sleeve }),
      ...(condition.hardness === undefined ? {} : { hardness: condition.hardness }),
    },
    condition: {
      ...(overall === undefined ? {} : { overall }),
      ...(condition.throatClearance === undefined ? {} : { throatGap: condition.throatClearance }),
      ...(condition.followerClearance === undefined ? {} : { followerGap: condition.followerClearance }),
    },
  };
  const ranked = materials(given, facts.materials);
  const first = set.style ?? answerOf(ranked)?.ranked[0]?.style;
  return {
    speed,
    materials: ranked,
    style: when({ "set.style": first }, (known) => styleFacts(known["set.style"], facts.materials)),
    asked: set.style !== undefined,
  };
}

/** The gravest verdict on the box, as far as choosing a packing minds it. */
function overallOf(box: MeasuredBox): "good" | "worn" | "poor" | undefined {
  const overall = answerOf(box.condition)?.overall;
  if (overall === "good") return "good";
  if (overall === "attend") return "worn";
  return overall === "renew" ? "poor" : undefined;
}

/** The named members that are known. */
export function pick<T extends object, const N extends readonly (keyof T)[]>(
  from: T,
  names: N,
): { readonly [K in N[number]]?: Exclude<T[K], undefined> } {
  const picked: Partial<Record<keyof T, unknown>> = {};
  for (const name of names) if (from[name] !== undefined) picked[name] = from[name];
  return picked as { readonly [K in N[number]]?: Exclude<T[K], undefined> };
}
