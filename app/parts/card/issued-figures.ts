import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import type { Json } from "@ringwright/logbook";
import { planInWords } from "@ringwright/words/plan";

/**
 * The figures of a card as they were printed, part by part, with the program
 * that worked them out: whatever later versions say, this is what was at the box.
 */
export function figuresOf(plan: Found<Plan>, system: UnitSystem, version: string): Json {
  const { sections } = planInWords(plan, system);
  const parts = sections.map(({ id, blocks }) => {
    const rows = blocks.flatMap((block) => (block.kind === "row" && block.row.by === "worked" ? [[block.row.label, block.row.value]] : []));
    const marks = blocks.flatMap((block) => (block.kind === "mark" ? [block.text] : []));
    return { id, rows, marks };
  });
  return { program: version, units: system, parts: parts.filter(({ rows, marks }) => rows.length + marks.length > 0) };
}

/** A name that every file system takes: letters and digits of the box's name, and the day. */
export function fileName(box: string | undefined, rfc3339: string): string {
  const plain = (box ?? "")
    .normalize("NFC")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/gu, "")
    .slice(0, 60);
  return `${plain === "" ? "box" : plain}-${rfc3339.slice(0, 10)}.pdf`;
}
