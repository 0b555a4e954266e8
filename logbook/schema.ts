import { kinds } from "./kinds.ts";
import { hashSchema, idSchema, type JsonSchema } from "./shapes.ts";

const time: JsonSchema = { type: "string", format: "date-time" };
const whole: JsonSchema = { type: "integer" };

/**
 * An entry as a JSON Schema (2020-12). Kinds that this version knows have the
 * bodies that it writes; kinds and versions that it does not know pass as they are.
 */
export function entrySchema(): JsonSchema {
  const known = Object.entries(kinds);
  return {
    type: "object",
    properties: {
      v: { const: 1 },
      id: { ...idSchema, description: "UUID of version 7, made on the device." },
      site: idSchema,
      box: { anyOf: [idSchema, { type: "null" }] },
      kind: { type: "string", pattern: "^[a-z][a-z0-9-]{0,40}$", examples: known.map(([kind]) => kind) },
      kindVersion: { ...whole, minimum: 1 },
      at: {
        type: "object",
        properties: { device: time, serverOffsetMs: { type: ["integer", "null"] }, happened: time },
        required: ["device", "serverOffsetMs"],
        additionalProperties: false,
      },
      by: { type: "string", minLength: 1, maxLength: 80 },
      device: idSchema,
      seq: { ...whole, minimum: 1 },
      prev: {
        anyOf: [hashSchema, { type: "null" }],
        description: "SHA-256 of the bytes of the entry before, of the same site and device.",
      },
      after: { type: "array", items: idSchema, maxItems: 1000 },
      body: { type: "object" },
      method: { anyOf: [{ type: "string", maxLength: 200 }, { type: "null" }] },
    },
    required: ["v", "id", "site", "box", "kind", "kindVersion", "at", "by", "device", "seq", "prev", "after", "body", "method"],
    additionalProperties: false,
    allOf: known.map(([kind, { version, body }]) => ({
      anyOf: [
        { not: { type: "object", properties: { kind: { const: kind }, kindVersion: { ...whole, maximum: version } } } },
        { type: "object", properties: { body: body.schema } },
      ],
    })),
  };
}
