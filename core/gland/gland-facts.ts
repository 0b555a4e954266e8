import { type NutFactorFacts, type NutFactorFile, readNutFactors } from "./nut-condition.ts";
import { type ClassFacts, type ClassFile, readClasses } from "./property-class.ts";
import { readThreads, type ThreadFiles } from "./read-threads.ts";
import type { ThreadFacts } from "./thread.ts";

/** Facts that the gland's bolting rests on. */
export interface GlandFacts {
  readonly threads: ThreadFacts;
  readonly classes: ClassFacts;
  readonly nutFactors: NutFactorFacts;
}

/** The files of facts, in the units they are printed in. */
export interface GlandFiles extends ThreadFiles {
  readonly classes: ClassFile;
  readonly nutFactors: NutFactorFile;
}

/**
 * Turns the tables of threads, property classes and nut factors, as printed,
 * into what the gland's answers look up.
 *
 * Units: as each file says; SI in the result.
 * Range: the files of data/threads and data/limits/nut-factor.json; throws a RangeError for a unit it does not know: a mistake in the data.
 * Source: each row's own citation.
 * @example readGlandFacts({ metric, unified, proofLoads, classes, nutFactors })
 */
export function readGlandFacts(files: GlandFiles): GlandFacts {
  return { threads: readThreads(files), classes: readClasses(files.classes), nutFactors: readNutFactors(files.nutFactors) };
}
