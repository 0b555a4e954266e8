import { countShape, groupShape, type Json, listShape, maybe, type Shape, textShape } from "@ringwright/answers";
import { datums, motions, releases, zones } from "@ringwright/core/box";
import type { BoxState, Fact, Job, Said, Shown } from "@ringwright/logbook";
import { idField } from "../operations/fields.ts";
import type { Heading } from "./heading.ts";

const id: Shape<string> = { schema: idField.schema, write: (value) => value };
/** A value in the shape in which entries carry it. */
const asWritten: Shape<unknown> = { schema: {}, write: (value) => value as Json };
const orUnknown = (choices: readonly string[]): Shape<string> => ({
  schema: { enum: [...new Set([...choices, "unknown"])] },
  write: (value) => value,
});
const orNull = (shape: Shape<string>): Shape<string | null> => ({
  schema: { anyOf: [shape.schema, { type: "null" }] },
  write: (value) => (value === null ? null : shape.write(value)),
});

const said: Shape<Said<unknown>> = groupShape({ value: asWritten, entry: id, by: textShape, at: textShape });
const saidList = listShape(said);
const fact: Shape<Fact<unknown>> = groupShape({ standing: saidList, said: countShape });

function named<T>(shape: Shape<T>): Shape<ReadonlyMap<string, T>> {
  return {
    schema: { type: "object", additionalProperties: shape.schema },
    write: (map) => Object.fromEntries([...map].map(([name, value]) => [name, shape.write(value)])),
  };
}

const job: Shape<Job> = groupShape({ id, begun: textShape, steps: named(fact), started: maybe(said) }) as Shape<Job>;

const yes: Shape<true> = { schema: { const: true }, write: (value) => value };
const shown: Shape<Shown> = {
  ...groupShape({ id, kind: textShape, by: textShape, at: textShape, crossedOutBy: maybe(id), newer: maybe(yes) }),
  write: ({ entry, crossedOutBy, newer }) => ({
    id: entry.id,
    kind: entry.kind,
    by: entry.by,
    at: entry.at.happened ?? entry.at.device,
    ...(crossedOutBy === undefined ? {} : { crossedOutBy }),
    ...(newer === undefined ? {} : { newer }),
  }),
};

const headingMembers = {
  box: id,
  name: orNull(textShape),
  place: orNull(textShape),
  motion: orUnknown(motions),
  zone: orUnknown(zones),
  datum: orUnknown(datums),
  release: orUnknown(releases),
  lastEntryAt: orNull(textShape),
  next: groupShape({ does: textShape, text: textShape }),
};

/** A box in a list: what it is, and the three things that are said on every box. */
export const headingShape: Shape<Heading> = groupShape(headingMembers) as unknown as Shape<Heading>;

const stateMembers = {
  disagreements: listShape(textShape),
  survey: { schema: { type: "object" }, write: (value: unknown) => value as Json },
  fields: named(fact),
  limits: named(fact),
  jobs: listShape(job),
  readings: saidList,
  adjustments: saidList,
  bridges: saidList,
  notes: saidList,
  oldRings: saidList,
  cards: saidList,
  photos: saidList,
  signatures: saidList,
  entries: listShape(shown),
};

const stateShape = groupShape({ ...headingMembers, ...stateMembers });

/** What the entries of a box add up to, with the survey that a plan is asked with. */
export const boxShape: Shape<{
  readonly heading: Heading;
  readonly state: BoxState;
  readonly survey: Json;
  readonly disagreements: readonly string[];
}> = {
  schema: stateShape.schema,
  write: ({ heading, state, survey, disagreements }) => stateShape.write({ ...heading, ...state, survey, disagreements } as never),
};
