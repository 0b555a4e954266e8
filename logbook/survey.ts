import type { FieldValue, Json, Measured, Planes, Readings } from "./entry.ts";
import type { BoxState, Fact } from "./fold/state.ts";
import { isGroup } from "./shapes.ts";

/** Fields that name the box and are no part of what a plan is asked. */
const beside: ReadonlySet<string> = new Set(["machine", "position", "tag"]);

/** A limit that the site sets for the gland gap says when to repack; the plan has no part that asks for it. */
export const repackLimit = "gland-gap";

/**
 * What is known of a box as a question for the plan, as the box file of the
 * command line would say it: `{ motion, shaft: { readings, how }, port: { diameter } }`.
 * Where devices disagree the newest is taken; `disagreements` names those fields.
 * Where a field and a part of it are both said, `port` and `port.diameter`, the
 * part counts, beside readings if the field says such.
 */
export function surveyOf({ fields, limits }: BoxState): { readonly [name: string]: Json } {
  const survey: Branch = { parts: new Map() };
  for (const [field, fact] of fields) {
    const value = standing(fact);
    if (value !== undefined && !beside.has(field)) branchAt(survey, field.split(".")).said = asAsked(value);
  }
  const set = [...limits.values()]
    .flatMap((fact) => standing(fact) ?? [])
    .filter(({ item, value }) => value !== null && item !== repackLimit);
  if (set.length > 0) {
    branchAt(survey, ["condition", "houseLimits"]).said = set.map(
      ({ item, value, setBy, why }): Json => ({
        item,
        ...(typeof value === "number" ? { number: value } : { value: quantity(value as Measured) }),
        setBy,
        ...(why === undefined ? {} : { why }),
      }),
    );
  }
  return groupOf(survey);
}

/** Fields that two devices said differently, neither having seen the other. */
export function disagreements({ fields }: BoxState): readonly string[] {
  return [...fields].filter(([, fact]) => fact.standing.length > 1).map(([field]) => field);
}

/** The value that stands; where several do, the newest. */
export function standing<Value>(fact: Fact<Value> | undefined): Value | undefined {
  return fact?.standing[0]?.value;
}

/** A name of the survey: what was said of it, and of its parts. Kept in maps, so that no name can be a word of the language. */
interface Branch {
  said?: Json;
  readonly parts: Map<string, Branch>;
}

function branchAt(from: Branch, path: readonly string[]): Branch {
  return path.reduce((branch, name) => {
    const part = branch.parts.get(name) ?? { parts: new Map() };
    branch.parts.set(name, part);
    return part;
  }, from);
}

function groupOf({ said, parts }: Branch): { readonly [name: string]: Json } {
  const beneath = [...parts].map(([name, branch]) => [name, branch.parts.size > 0 ? groupOf(branch) : (branch.said ?? null)] as const);
  return { ...(isTaken(said) ? said : {}), ...Object.fromEntries(beneath) };
}

/** Whether a field says how something was measured, which its parts can add to: `shaft` with `shaft.how`. */
function isTaken(said: Json | undefined): said is { readonly [name: string]: Json } {
  return typeof said === "object" && said !== null && ("readings" in said || "planes" in said);
}

function quantity({ value, unit }: Measured): Json {
  return { value, unit };
}

function isReadings(value: FieldValue): value is Readings | Planes {
  return typeof value === "object" && value !== null && ("readings" in value || "planes" in value);
}

function asAsked(value: FieldValue): Json {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return (value as readonly (string | Measured)[]).map((one) => (typeof one === "string" ? one : quantity(one)));
  if (!isReadings(value)) return quantity(value as Measured);
  const { readings, planes, how, resolution } = { planes: undefined, ...value };
  return {
    ...(readings === undefined ? {} : { readings: readings.map(quantity) }),
    ...(planes === undefined ? {} : { planes: planes.map((plane) => plane.map(quantity)) }),
    ...(how === undefined ? {} : { how }),
    ...(resolution === undefined ? {} : { resolution: quantity(resolution) }),
  };
}

/** The same question with one field said otherwise. */
export function surveyWith(survey: { readonly [name: string]: Json }, field: string, value: FieldValue): { readonly [name: string]: Json } {
  return withSaid(survey, field.split("."), asAsked(value));
}

function withSaid(group: { readonly [name: string]: Json }, [name = "", ...rest]: readonly string[], said: Json): typeof group {
  const inner = group[name];
  return { ...group, [name]: rest.length === 0 ? said : withSaid(isGroup(inner) ? inner : {}, rest, said) };
}
