import type { FieldValue, Json, Measured, Readings } from "./entry.ts";
import type { BoxState, Fact } from "./fold/state.ts";
import { isGroup } from "./shapes.ts";

type Group = { [name: string]: Json };

/** Fields that name the box and are no part of what a plan is asked. */
const beside: ReadonlySet<string> = new Set(["machine", "position", "tag"]);

/**
 * What is known of a box as a question for the plan, as the box file of the
 * command line would say it: `{ motion, shaft: { readings, how }, port: { diameter } }`.
 * Where devices disagree the newest is taken; `disagreements` names those fields.
 */
export function surveyOf({ fields, limits }: BoxState): { readonly [name: string]: Json } {
  const survey: Group = {};
  for (const [field, fact] of fields) {
    const value = standing(fact);
    if (value === undefined || beside.has(field)) continue;
    put(survey, field.split("."), asAsked(value));
  }
  const set = [...limits.values()].flatMap((fact) => standing(fact) ?? []).filter(({ value }) => value !== null);
  if (set.length > 0) {
    const houseLimits = set.map(
      ({ item, value, setBy, why }): Json => ({
        item,
        ...(typeof value === "number" ? { number: value } : { value: quantity(value as Measured) }),
        setBy,
        ...(why === undefined ? {} : { why }),
      }),
    );
    put(survey, ["condition", "houseLimits"], houseLimits);
  }
  return survey;
}

/** Fields that two devices said differently, neither having seen the other. */
export function disagreements({ fields }: BoxState): readonly string[] {
  return [...fields].filter(([, fact]) => fact.standing.length > 1).map(([field]) => field);
}

/** The value that stands; where several do, the newest. */
export function standing<Value>(fact: Fact<Value> | undefined): Value | undefined {
  return fact?.standing[0]?.value;
}

function put(group: Group, [name = "", ...rest]: readonly string[], value: Json): void {
  if (rest.length === 0) {
    group[name] = value;
    return;
  }
  const inner = group[name];
  const next: Group = isGroup(inner) ? { ...inner } : {};
  group[name] = next;
  put(next, rest, value);
}

function quantity({ value, unit }: Measured): Json {
  return { value, unit };
}

function isReadings(value: FieldValue): value is Readings {
  return typeof value === "object" && value !== null && "readings" in value;
}

function asAsked(value: FieldValue): Json {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return (value as readonly (string | Measured)[]).map((one) => (typeof one === "string" ? one : quantity(one)));
  if (!isReadings(value)) return quantity(value as Measured);
  const { readings, how, resolution } = value;
  return {
    readings: readings.map(quantity),
    ...(how === undefined ? {} : { how }),
    ...(resolution === undefined ? {} : { resolution: quantity(resolution) }),
  };
}

/** The same question with one field said otherwise. */
export function surveyWith(survey: { readonly [name: string]: Json }, field: string, value: FieldValue): { readonly [name: string]: Json } {
  const other: Group = { ...survey };
  put(other, field.split("."), asAsked(value));
  return other;
}
