import { type JsonSchema, surveyField } from "@ringwright/answers";

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly anyOf?: readonly Node[];
}

/** Every field of the survey by its whole name in dots, as the schema of a box file has them. */
export const surveyFields: readonly string[] = namesIn(surveyField.schema as JsonSchema & Node, "");

function namesIn(node: Node, at: string): readonly string[] {
  const properties = node.properties ?? node.anyOf?.find((one) => one.properties)?.properties;
  const isGroup = properties !== undefined && !("value" in properties) && !("readings" in properties);
  if (!isGroup) return [at];
  return Object.entries(properties).flatMap(([name, inner]) => namesIn(inner, at === "" ? name : `${at}.${name}`));
}
