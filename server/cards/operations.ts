import { type AnyAnswer, choiceField, type Facts, findAnswer, groupField, type Json, optional } from "@ringwright/answers";
import type { Paper } from "@ringwright/card";
import type { UnitSystem } from "@ringwright/core/units";
import { surveyOf } from "@ringwright/logbook";
import type { Store } from "@ringwright/store";
import { planOf } from "../answers/plan-of.ts";
import { ofBox } from "../boxes/operations.ts";
import { exampleOf } from "../docs/examples.ts";
import { asItIs, idField, largestQuestion } from "../operations/fields.ts";
import { type AnyOperation, type Handled, operation } from "../operations/operation.ts";
import { problem } from "../problems/problem.ts";
import { printCard } from "./print.ts";

const reply = { type: "application/pdf", schema: { type: "string", contentMediaType: "application/pdf" } };
const query = groupField({
  units: optional(choiceField(["metric", "inch"], "Units that the card shows.")),
  paper: optional(choiceField(["a4", "letter"], "Size of the sheets.")),
});

interface Sheets {
  readonly units?: UnitSystem;
  readonly paper?: Paper;
}

/** What a card is made with. */
interface Press {
  readonly store: Store;
  readonly facts: Facts;
  readonly now: () => number;
}

/** The card to take along, of a box and of any survey. */
export function cardOperations(press: Press): readonly AnyOperation[] {
  const survey = (findAnswer("plan") as AnyAnswer).question.schema;
  return [
    operation({
      id: "box-card",
      topic: "cards",
      method: "GET",
      path: "/api/v1/sites/{site}/boxes/{box}/card.pdf",
      params: groupField({ site: idField, box: idField }),
      query,
      reply,
      refuses: ["nothing-there", "refused", "store-fault"],
      handle: ({ params, query: sheets }) =>
        ofBox(press.store, params, async (state) => {
          const made = await printed(surveyOf(state), sheets, press);
          // Whatever the box lacks: the request itself was fine.
          return "problem" in made ? { problem: problem("refused", made.problem.refusal) } : made;
        }),
    }),
    operation({
      id: "card",
      topic: "cards",
      method: "POST",
      path: "/api/v1/cards",
      query,
      body: { field: asItIs(survey), largest: largestQuestion, example: () => exampleOf("plan").question },
      reply,
      refuses: ["too-large", "media-type", "refused"],
      handle: ({ query: sheets, body }) => printed(body, sheets, press),
    }),
  ];
}

async function printed(survey: Json, { units = "metric", paper = "a4" }: Sheets, { facts, now }: Press): Promise<Handled> {
  const plan = planOf(survey, facts);
  if ("problem" in plan) return plan;
  return { content: await printCard(plan, { system: units, paper, now: new Date(now()) }) };
}
