import { type AnyAnswer, ask, type Facts, type Field, findAnswer, foundSchema, groupField, type JsonSchema } from "@ringwright/answers";
import { type BoxState, disagreements, surveyOf } from "@ringwright/logbook";
import type { Store } from "@ringwright/store";
import { idField } from "../operations/fields.ts";
import { type AnyOperation, type Handled, json, operation, replies } from "../operations/operation.ts";
import { nothingThere, problem } from "../problems/problem.ts";
import { Books, stateOf } from "./books.ts";
import { headingOf } from "./heading.ts";
import { boxShape, headingShape } from "./shapes.ts";

/** Names a box in a path. */
const boxParams: Field<{ readonly site: string; readonly box: string }> = groupField({ site: idField, box: idField });

/** Boxes of a site: worked out from entries each time, never kept. */
export function boxOperations({
  store,
  facts,
  now,
}: {
  readonly store: Store;
  readonly facts: Facts;
  readonly now: () => number;
}): readonly AnyOperation[] {
  const books = new Books(store);
  const plan = findAnswer("plan") as AnyAnswer;
  return [
    operation({
      id: "boxes",
      topic: "boxes",
      method: "GET",
      path: "/api/v1/sites/{site}/boxes",
      params: groupField({ site: idField }),
      reply: { type: json, schema: listSchema },
      refuses: ["store-fault"],
      handle: async ({ params: { site } }) => {
        const book = await books.of(site);
        return replies({ boxes: book.boxes().map((box) => headingShape.write(headingOf(book.state(box), now()))) });
      },
    }),
    operation({
      id: "box",
      topic: "boxes",
      method: "GET",
      path: "/api/v1/sites/{site}/boxes/{box}",
      params: boxParams,
      reply: { type: json, schema: boxShape.schema },
      refuses: ["nothing-there", "store-fault"],
      handle: ({ params }) =>
        ofBox(store, params, (state) =>
          replies(
            boxShape.write({ heading: headingOf(state, now()), state, survey: surveyOf(state), disagreements: disagreements(state) }),
          ),
        ),
    }),
    operation({
      id: "box-plan",
      topic: "boxes",
      method: "GET",
      path: "/api/v1/sites/{site}/boxes/{box}/plan",
      params: boxParams,
      reply: { type: json, schema: foundSchema(plan) },
      refuses: ["nothing-there", "refused", "store-fault"],
      handle: ({ params }) =>
        ofBox(store, params, (state) => {
          const reply = ask("plan", surveyOf(state), facts);
          // Whatever the box lacks: the request itself was fine.
          return reply.ok ? replies(reply) : { problem: problem("refused", reply.refusal) };
        }),
    }),
  ];
}

/** Does something with a box, where there is one. */
export async function ofBox(
  store: Store,
  { site, box }: { readonly site: string; readonly box: string },
  use: (state: BoxState) => Handled | Promise<Handled>,
): Promise<Handled> {
  const state = await stateOf(store, site, box);
  return state ? use(state) : { problem: nothingThere("box", box) };
}

const listSchema: JsonSchema = {
  type: "object",
  properties: { boxes: { type: "array", items: headingShape.schema } },
  required: ["boxes"],
  additionalProperties: false,
};
