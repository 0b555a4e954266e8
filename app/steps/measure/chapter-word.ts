import { isStem, type Motion } from "@ringwright/core/box";
import type { Words } from "../../parts/words.ts";
import type { Chapter, Known } from "./question.ts";

/** What a chapter is called on this box: a valve has a stem, a plunger pump a rod. */
export function chapterWord(words: Words, chapter: Chapter, { motion }: Known): string {
  if (chapter === "shaft" && typeof motion === "string") {
    if (isStem(motion as Motion)) return words("chapter-stem");
    if (motion === "stroking") return words("chapter-rod");
  }
  return words(`chapter-${chapter}`);
}
