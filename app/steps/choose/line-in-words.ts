import type { MaterialLine } from "@ringwright/core/materials";
import type { Kind, Kinds } from "@ringwright/core/units";
import { trimmed } from "../../parts/trimmed.ts";
import type { Words } from "../../parts/words.ts";

/** One fact of a packing as a person reads it. */
export interface LineText {
  readonly label: string;
  /** Empty where it is not known. */
  readonly value: string;
  /** What the sources give from lowest to highest, what is said beside it. */
  readonly notes: readonly string[];
  readonly remembered: boolean;
}

/** Kinds of quantity by SI unit; what presses on the rings is a stress, not a pressure. */
const kinds: Readonly<Record<string, Kind>> = { K: "temperature", "m/s": "speed", "kg/m3": "density", m: "length" };

/** A fact of a packing in words: its value, its spread, its remarks, and whether it is only remembered. */
export function lineInWords({ property, unit, line }: MaterialLine, words: Words): LineText {
  const kind: Kind | undefined = unit === "Pa" ? (property.endsWith("stress") ? "stress" : "pressure") : kinds[unit];
  const fine = property === "sleeve-finish";
  const shown = (value: number | string): string => {
    if (typeof value === "string") return words.called(value);
    if (kind === undefined) return unit === "1/K" ? `${Number((value * 1e6).toPrecision(3))} µm/m·K` : plain(value, unit);
    return trimmed(words.value(kind, value as Kinds[Kind], fine ? { unit: "um", digits: 2 } : { digits: 3 }));
  };
  const { value, min, max, spread, names, policy, notLimiting, says, note } = line;
  const use = (["food", "potable", "oxygen"] as const).flatMap((name) => {
    const allowed = line[name];
    return typeof allowed === "string" ? [`${words(`choose-use-${name}`)}: ${words(`choose-use-${allowed}`)}`] : [];
  });
  const rank = line.class;
  const found =
    typeof value === "boolean"
      ? words(value ? "choose-yes" : "choose-no")
      : typeof value === "number"
        ? shown(value)
        : (min ?? null) !== null || (max ?? null) !== null
          ? [min, max].map((one) => (one === null || one === undefined ? "…" : shown(one))).join(" – ")
          : typeof rank === "number" || typeof rank === "string"
            ? shown(rank)
            : names !== undefined && names.length > 0
              ? names.map((name) => words.called(name)).join(", ")
              : typeof policy === "string"
                ? words.called(policy)
                : notLimiting
                  ? words("choose-not-limiting")
                  : use.join("; ");
  const spreads = spread && spread[0] !== spread[1] ? [words("choose-spread", { low: shown(spread[0]), high: shown(spread[1]) })] : [];
  const remarks = [...(says ?? []), ...(note === undefined ? [] : [note])].map((id) => words(id));
  return { label: words.called(`material-${property}`), value: found, notes: [...spreads, ...remarks], remembered: !line.seen };
}

function plain(value: number, unit: string): string {
  const number = String(Number(value.toPrecision(3)));
  return unit === "1" ? number : `${number} ${unit.replace("W/(m*K)", "W/m·K")}`;
}
