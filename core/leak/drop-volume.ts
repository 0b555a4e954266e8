import type { Volume } from "../units/index.ts";
import { type Answer, begin, refuse } from "../workings/index.ts";
import { fromCatch } from "./drop-catch.ts";
import type { DropVolumeFound, DropVolumeQuestion } from "./drop-question.ts";
import { fromTip } from "./drop-tip.ts";
import { assumedDropVolume, assumedDropVolumeRule, dropVolumeSpread } from "./drops.ts";

function assumed(): Answer<DropVolumeFound> {
  const work = begin();
  const volume = work.assume(assumedDropVolumeRule, assumedDropVolume);
  work.warn({ kind: "gap", input: "dropVolume", says: { id: "drop-volume-not-measured" } });
  const { low, high } = dropVolumeSpread;
  return work.found({
    dropVolume: { mean: volume, u: ((high - low) / Math.sqrt(12)) as Volume },
    band: dropVolumeSpread,
    basis: "assumed",
  });
}

/**
 * Volume of one drop: from a catch with the drops counted, which is best; else
 * estimated from the edge it hangs from; else the usual 0.05 mL with its spread.
 *
 *   V = Vc / N; V = f π d σ / (ρ g) with f about 0.65
 *
 * Units: V, Vc m3; d m; σ N/m; ρ kg/m3; g 9.80665 m/s2.
 * Range: 2 to 100 000 drops, 0.01 mL to 10 L caught; edge 0.1 to 20 mm, flagged outside 1 to 8.5 mm; water 0 to 99 °C.
 * Refused outside, and when drops come without what was caught or the other way round. A volume outside 0.01 to 0.5 mL
 * is asked about.
 * Source: T. Tate 1864 (from memory) with f from drops weighed by F. Eschbaum 1895; JCGM 100 for the catch.
 * @example dropVolume({ drops: 200, caught: quantity("volume", 10, "mL") }) // 0.05 mL
 */
export function dropVolume(given: DropVolumeQuestion): Answer<DropVolumeFound> {
  const { drops, caught, tip } = given;
  if (drops !== undefined && caught !== undefined) return fromCatch(drops, caught, given);
  if (drops !== undefined || caught !== undefined) {
    return refuse({ kind: "not-known", input: drops === undefined ? "drops" : "caught", says: { id: "drop-catch-incomplete" } });
  }
  return tip === undefined ? assumed() : fromTip(tip, given);
}
