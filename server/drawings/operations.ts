import {
  type AnyAnswer,
  choiceField,
  type Facts,
  type Field,
  findAnswer,
  groupField,
  type Json,
  optional,
  quantityField,
  type Reply,
  replyOf,
  work,
} from "@ringwright/answers";
import type { Plan } from "@ringwright/core/plan";
import { inUnit, type Length, type UnitSystem } from "@ringwright/core/units";
import { drawOfPlan, type PlanDrawing, planDrawings, toSvg, usualWidth } from "@ringwright/drawings";
import { surveyOf } from "@ringwright/logbook";
import type { Store } from "@ringwright/store";
import { say } from "@ringwright/words";
import { ofBox } from "../boxes/operations.ts";
import { exampleOf } from "../docs/examples.ts";
import { asItIs, idField, largestQuestion } from "../operations/fields.ts";
import { type AnyOperation, type Handled, operation } from "../operations/operation.ts";
import { type Problem, problem, problemOfRefusal, problemSaying } from "../problems/problem.ts";

const svg = "image/svg+xml; charset=utf-8";
const reply = { type: svg, schema: { type: "string" } };
const nameField = choiceField(planDrawings, "Which drawing.");
const query = groupField({
  units: optional(choiceField(["metric", "inch"], "Units that the drawing shows.")),
  width: optional(widthField()),
});

/** Narrower than any screen, wider than any sheet. */
const widths = { min: 0.03, max: 2 };

function widthField(): Field<Length> {
  const field = quantityField("length", "Width of the paper with its unit, such as 180mm; 30 mm to 2 m.");
  return {
    schema: field.schema,
    read(raw, path, reader) {
      const read = field.read(raw, path, reader);
      if (!read.ok || (read.value >= widths.min && read.value <= widths.max)) return read;
      return {
        ok: false,
        malformed: { kind: "outside-range", input: path, given: raw ?? null, allowed: { ...widths, unit: "m" }, id: "number-outside" },
      };
    },
  };
}

interface Sheet {
  readonly units?: UnitSystem;
  readonly width?: Length;
}

/** Drawings to scale: of a box, and of any survey. */
export function drawingOperations(store: Store, facts: Facts): readonly AnyOperation[] {
  const survey = (findAnswer("plan") as AnyAnswer).question.schema;
  return [
    operation({
      id: "box-drawing",
      topic: "drawings",
      method: "GET",
      path: "/api/v1/sites/{site}/boxes/{box}/drawings/{name}.svg",
      params: groupField({ site: idField, box: idField, name: nameField }),
      query,
      reply,
      refuses: ["nothing-there", "refused", "store-fault"],
      handle: ({ params, query: sheet }) =>
        ofBox(store, params, (state) => {
          const found = drawn(params.name, surveyOf(state), sheet, facts);
          // Whatever the box lacks: the request itself was fine.
          return "problem" in found ? { problem: problem("refused", found.problem.refusal) } : found;
        }),
    }),
    operation({
      id: "drawing",
      topic: "drawings",
      method: "POST",
      path: "/api/v1/drawings/{name}",
      params: groupField({ name: nameField }),
      query,
      body: { field: asItIs(survey), largest: largestQuestion, example: () => exampleOf("plan").question },
      reply,
      refuses: ["too-large", "media-type", "refused"],
      handle: ({ params: { name }, query: sheet, body }) => drawn(name, body, sheet, facts),
    }),
  ];
}

function drawn(name: PlanDrawing, survey: Json, { units = "metric", width }: Sheet, facts: Facts): Handled {
  const worked = work("plan", survey, facts);
  if ("malformed" in worked) return refused(worked.malformed);
  if (!worked.found.ok) return refused(replyOf(worked));
  const plan = worked.found.value as Plan;
  const drawing = drawOfPlan(name, plan, plan.survey.name ?? say({ id: "plan-unnamed-box" }));
  if (!drawing) return { problem: problemSaying("refused", { kind: "not-known", input: "name", given: name, id: "not-drawable" }) };
  return { content: toSvg(drawing, { system: units, width: width === undefined ? usualWidth[name] : inUnit("length", width, "mm") }) };
}

function refused(reply: Reply): Handled & { readonly problem: Problem } {
  if (reply.ok) throw new Error("a refusal was answered");
  return { problem: problemOfRefusal(reply.refusal) };
}
