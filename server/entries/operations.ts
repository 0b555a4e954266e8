import { countField, groupField, type Json, type JsonSchema, listField, optional } from "@ringwright/answers";
import { entrySchema, largestEntry } from "@ringwright/logbook";
import type { Store } from "@ringwright/store";
import { asItIs, countInQuery, idField } from "../operations/fields.ts";
import { type AnyOperation, json, operation, replies } from "../operations/operation.ts";
import { pull } from "./pull.ts";
import { push } from "./push.ts";

/** Entries in one push, and in one page of a pull. */
const mostEntries = 1000;
/** Bytes of one push; a device that has more sends it in several. Every single entry fits, whatever is written in it. */
const largestPush = 16 * 1024 * 1024;
/** Bytes after which a page of a pull ends early. */
const largestPage = 8 * 1024 * 1024;

const path = "/api/v1/sites/{site}/entries";
const params = groupField({ site: idField });
const ids: JsonSchema = { type: "array", items: idField.schema };
const count: JsonSchema = { type: "integer", minimum: 0 };
const one = asItIs({ ...entrySchema(), description: `At most ${largestEntry} characters of canonical JSON (RFC 8785).` });

/** Entries come in and go out here. */
export function entryOperations(store: Store): readonly AnyOperation[] {
  return [
    operation({
      id: "sites",
      topic: "entries",
      method: "GET",
      path: "/api/v1/sites",
      reply: { type: json, schema: sitesSchema },
      refuses: ["store-fault"],
      handle: async () => replies({ sites: await store.sites(), opens: (await store.setting("site")) ?? null }),
    }),
    operation({
      id: "pull",
      topic: "entries",
      method: "GET",
      path,
      params,
      query: groupField({
        since: optional(countInQuery(countField({ min: 0, max: Number.MAX_SAFE_INTEGER }, "Cursor of the page before; 0 for all."))),
        limit: optional(countInQuery(countField({ min: 1, max: mostEntries }, "Most entries to send; fewer come where they are large."))),
      }),
      reply: { type: json, schema: pageSchema },
      refuses: ["refused", "store-fault"],
      handle: async ({ params: { site }, query: { since = 0, limit = mostEntries } }) => ({
        content: await pull(store, { site, since, limit, largest: largestPage }),
      }),
    }),
    operation({
      id: "push",
      topic: "entries",
      method: "POST",
      path,
      params,
      body: { field: groupField({ entries: listField(one, { max: mostEntries }) }), largest: largestPush },
      reply: { type: json, schema: pushedSchema },
      refuses: ["too-large", "media-type", "store-fault"],
      handle: async ({ params: { site }, body: { entries } }) => replies(await push(store, site, entries as readonly Json[])),
    }),
  ];
}

const sitesSchema: JsonSchema = {
  type: "object",
  properties: {
    sites: {
      type: "array",
      items: {
        type: "object",
        properties: { site: idField.schema, entries: count, cursor: count },
        required: ["site", "entries", "cursor"],
        additionalProperties: false,
      },
    },
    opens: { description: "The site that this installation opens.", anyOf: [idField.schema, { type: "null" }] },
  },
  required: ["sites", "opens"],
  additionalProperties: false,
};

const pageSchema: JsonSchema = {
  type: "object",
  properties: {
    entries: { type: "array", items: one.schema, maxItems: mostEntries },
    cursor: { ...count, description: "Where to go on from." },
    more: { type: "boolean" },
  },
  required: ["entries", "cursor", "more"],
  additionalProperties: false,
};

const pushedSchema: JsonSchema = {
  type: "object",
  properties: {
    kept: { ...ids, description: "On disk before this was said." },
    known: { ...ids, description: "Kept before with the very same bytes." },
    refused: {
      type: "array",
      description: "Not kept, each with its place in what was sent.",
      items: {
        type: "object",
        properties: {
          index: count,
          id: { anyOf: [{ type: "string" }, { type: "null" }] },
          fault: { enum: ["entry-malformed", "entry-text", "entry-too-large", "entry-not-json", "entry-other-site", "entry-clashes"] },
          at: { type: "string", description: "Where in the entry: body.field." },
          why: { type: "string" },
        },
        required: ["index", "id", "fault", "at", "why"],
        additionalProperties: false,
      },
    },
    cursor: count,
  },
  required: ["kept", "known", "refused", "cursor"],
  additionalProperties: false,
};
