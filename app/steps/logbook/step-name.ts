import type { Words } from "../../parts/words.ts";

/** The first sentence of a text, without its full stop. */
export function firstSentence(text: string): string {
  return /^.*?[.?](?=\s|$)/su.exec(text)?.[0].replace(/\.$/u, "") ?? text;
}

/** The first words of a text: up to a colon or the end of the sentence. */
export function firstWords(text: string): string {
  return firstSentence(text).split(/:(?=\s)/u)[0] ?? text;
}

/** What a step is called in a line: the first words of its sentence, as the plan has it or else as it stands for every box. */
export function stepName(id: string, steps: ReadonlyMap<string, string>, words: Words): string {
  const planned = steps.get(id);
  if (planned !== undefined) return firstSentence(planned);
  const general = words(id);
  if (general !== id) return firstSentence(general);
  const [, base = id, number = ""] = /^(.*)-(\d+)h?$/u.exec(id) ?? [];
  if (words(base) === base) return words.called(id);
  // Of a step done ring by ring only its ring can be told without the plan.
  if (words(base, { ring: number }) !== words(base)) return words("entry-ring", { ring: number });
  return firstSentence(words(base, { hours: number }));
}
