import type { Motion } from "@ringwright/core/box";
import { answerOf } from "@ringwright/core/plan";
import { boxOfPlan, type Drawing, drawBoxSection } from "@ringwright/drawings";
import type { Live } from "./live.ts";
import type { Question } from "./question.ts";
import { typicalBox } from "./typical.ts";

/** A drawing of the box and whether it is this one. */
export interface Picture {
  readonly drawing: Drawing;
  /** Drawn from what was measured; else a typical box with what is known of this one. */
  readonly own: boolean;
}

/** The box as it is known; none while shaft, bore or the set are not, or do not go together. */
export function ownDrawing(live: Live, title: string): Drawing | undefined {
  const { planned } = live;
  if (planned.kind !== "planned" || !planned.answer.ok) return undefined;
  const box = boxOfPlan(planned.answer.value, title);
  const drawing = box && drawBoxSection(box);
  return drawing?.toScale ? drawing : undefined;
}

/** A typical box in the place of one that can't be drawn yet: only what is known of it, and what is asked, is dimensioned. */
export function typicalDrawing({ planned, question }: Live, asked: Question | undefined): Drawing {
  const box = planned.kind === "planned" && planned.answer.ok ? planned.answer.value.box : undefined;
  const size = (part: "shaft" | "bore" | "depth") => (box ? answerOf(box[part])?.mean.mean : undefined);
  const known = { shaft: size("shaft"), bore: size("bore"), depth: size("depth") };
  const motion = (question.motion ?? "turning") as Motion;
  const drawing = [known, { ...known, depth: undefined }, { shaft: known.shaft }, {}]
    .map((sizes) => drawBoxSection(typicalBox(motion, sizes)))
    .find(({ toScale }) => toScale);
  if (!drawing) throw new Error("a typical box can always be drawn");
  return {
    ...drawing,
    dimensions: drawing.dimensions.flatMap((one) =>
      one.ink === "measured" ? [one] : isAsked(one.id, asked) ? [{ ...one, ink: "measured", open: true }] : [],
    ),
    labels: drawing.labels.filter(({ id }) => id === "wet-end" || id === "air-side"),
    notes: [],
    toScale: false,
  };
}

/** This box while one question is open: what was measured is dimensioned, and what is asked. */
export function pointing(drawing: Drawing, asked: Question): Drawing {
  return {
    ...drawing,
    dimensions: drawing.dimensions.filter(({ id, ink }) => ink === "measured" || isAsked(id, asked)),
    notes: [],
  };
}

/** The part that the question is about, by its name in the drawing: a sleeve is what the rings run on. */
export function markedPart(drawing: Drawing, { part }: Question): string | undefined {
  const named = (id: string) => drawing.parts.some((one) => one.id === id);
  if (part === "shaft" && named("sleeve")) return "sleeve";
  if (part === "sleeve" && !named("sleeve")) return "shaft";
  return part !== undefined && named(part) ? part : undefined;
}

function isAsked(id: string, asked: Question | undefined): boolean {
  if (asked?.dimension === undefined) return false;
  return asked.dimension === id || (asked.dimension === "shaft" && (id === "sleeve" || id === "stem"));
}
