import type { Answer, Warning } from "@ringwright/core/workings";

/** The value of an answer that a test counts on; a refusal stops the test and shows itself. */
export function found<T>(answer: Answer<T>): T {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.refusal)}`);
  return answer.value;
}

/** Ids of what an answer warns of. */
export function warnings(answer: Answer<unknown>, kind?: Warning["kind"]): readonly string[] {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.refusal)}`);
  return answer.warnings.filter((warning) => kind === undefined || warning.kind === kind).map(({ says }) => says.id);
}
