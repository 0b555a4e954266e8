import { motions, releases, uses } from "@ringwright/core/box";
import { phases as anyPhase, seatings } from "@ringwright/core/cautions";
import { boxDesigns } from "@ringwright/core/flush";
import { nutConditions } from "@ringwright/core/gland";
import { conditions, phases, solidsLevels } from "@ringwright/core/materials";
import { cuts, seatings as hard } from "@ringwright/core/rings";
import { stemSets } from "@ringwright/core/stems";
import { hows } from "@ringwright/core/uncertainty";
import { englishSpellings as words } from "@ringwright/words";

type Spellings = Readonly<Record<string, string>>;

/** What people write for the choices of a list, beside the choices themselves. */
const forLists: ReadonlyMap<readonly string[], Spellings> = new Map<readonly string[], Spellings>([
  [motions, words.motion],
  [releases, words.release],
  [phases, words.phase],
  [anyPhase, words.phase],
  [solidsLevels, words.solids],
  [conditions, words.condition],
  [uses, words.use],
  [cuts, words.cut],
  [nutConditions, words.nuts],
  [seatings, words.seating],
  [hard, words.seating],
  [stemSets, words.stemSet],
  [hows, words.how],
  [boxDesigns, words.design],
]);

/** A spelling as compared: lower case, all that is neither letter nor digit one hyphen. */
export function spelt(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/gu, "");
}

/** The choice that a text or a yes or no stands for; none when it may be several or none. */
export function chosen<C extends string>(raw: string | number | boolean, choices: readonly C[]): C | undefined {
  const text = spelt(raw === true ? "yes" : raw === false ? "no" : String(raw));
  const plain = choices.find((choice) => spelt(choice) === text);
  if (plain !== undefined || text === "") return plain;
  const meant = unknownIn(text, choices) ?? forLists.get(choices)?.[text];
  return choices.find((choice) => choice === meant);
}

/** Whether a text says that something is not known. */
export function isUnknown(text: string): boolean {
  return ["unknown", "not-known", "don-t-know", "dont-know"].includes(spelt(text));
}

/** Not known, in whichever word the list has for it. */
function unknownIn(text: string, choices: readonly string[]): string | undefined {
  if (!isUnknown(text)) return undefined;
  return choices.find((choice) => choice === "unknown" || choice === "not-known");
}

/** The id that a text stands for in one of the lists of things; a text that is no spelling stays as it is. */
export function idFor(list: "sleeve" | "fluid", text: string): string {
  const ids: Spellings = words[list];
  const key = spelt(text);
  return (Object.hasOwn(ids, key) ? ids[key] : undefined) ?? text;
}
