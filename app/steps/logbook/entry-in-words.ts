import type { Bodies, Entry, EntryKind, FieldValue } from "@ringwright/logbook";
import { isKnown, kinds } from "@ringwright/logbook";
import { fieldName, fieldValue, foundValue } from "../../parts/field-value.ts";
import type { Words } from "../../parts/words.ts";
import { stepName } from "./step-name.ts";

/** An entry as a fitter reads it. */
export interface EntryText {
  /** What sort of entry: Measured, Fit, Note. */
  readonly kind: string;
  /** What it is about: bore, ring 3 home. */
  readonly what: string;
  /** What was measured, chosen or written, as it was typed. */
  readonly value: string;
  /** What else stands in it. */
  readonly beneath: readonly string[];
}

/** What the words of an entry need beside the entry. */
export interface Around {
  readonly words: Words;
  /** Sentences of the steps of fitting and running in, by id, where the plan has them. */
  readonly steps: ReadonlyMap<string, string>;
  /** Another entry of the same box, for what is crossed out or signed. */
  readonly other: (id: string) => Entry | undefined;
}

type Said = Omit<EntryText, "kind">;
type Telling = { readonly [Kind in EntryKind]: (body: Bodies[Kind], around: Around) => Said };

const said = (what: string, value = "", ...beneath: readonly string[]): Said => ({
  what,
  value,
  beneath: beneath.filter((line) => line !== ""),
});
const why = ({ words }: Around, reason: string | undefined) =>
  reason === undefined || reason === "" ? "" : words("entry-why", { typed: reason });

function field({ field: name, value }: { readonly field: string; readonly value: FieldValue }, { words }: Around): Said {
  return said(fieldName(name, words), fieldValue(name, value, words));
}

function aboutEntry(id: string, around: Around): string {
  const entry = around.other(id);
  if (!entry) return around.words("entry-crossed-unknown");
  const { what, value } = entryInWords(entry, around);
  return value === "" ? what : `${what}: ${value}`;
}

function flats({ flats: moved, why: reason }: Bodies["adjustment"], around: Around): Said {
  const { words } = around;
  const [first = 0] = moved;
  const alike = moved.every((one) => one === first);
  const count = Math.abs(first);
  const value = alike
    ? first === 0
      ? words("entry-flats-none")
      : words(`entry-${count === 1 ? "flat" : "flats"}-${first > 0 ? "in" : "out"}`, { count })
    : words("entry-flats-each", { typed: moved.join(", ") });
  return said(words("entry-adjustment"), value, why(around, reason));
}

const telling: Telling = {
  "box-described": field,
  measured: field,
  "rings-chosen": field,
  "fit-step"({ step, found, expected, blanks = {}, cannot }, { words, steps }) {
    const notes = [
      ...(expected === undefined ? [] : [words("entry-expected", { typed: foundValue(expected, words) })]),
      ...Object.entries(blanks).map(([blank, given]) => words("entry-blank", { what: words.called(blank), given })),
    ];
    const value = cannot === undefined || found !== null ? foundValue(found, words) : "";
    const not = cannot === undefined ? "" : words("entry-not-done", { typed: words.called(cannot) });
    return said(stepName(step, steps, words), value === "" ? not : value, ...(value === "" ? [] : [not]), ...notes);
  },
  started: (_body, { words }) => said(words("entry-started-said")),
  reading({ what, state, value }, { words }) {
    return said(
      words.called(what),
      typeof value === "string" ? value : foundValue(value, words),
      state === undefined ? "" : words.called(state),
    );
  },
  adjustment: flats,
  "old-rings": ({ rings, note = "" }, { words }) => said(words("entry-old-rings"), words("entry-rings-out", { count: rings.length }), note),
  bridge({ step, why: reason, owner, until }, { words, steps }) {
    const about = step === undefined ? "" : stepName(step, steps, words);
    return said(reason, "", words("entry-bridge-said", { given: owner, until }), about);
  },
  photo: ({ type, bytes, caption = "" }, { words }) =>
    said(words("entry-photo"), caption, words("entry-photo-said", { typed: type, kilobytes: Math.max(1, Math.round(bytes / 1000)) })),
  note: ({ text }, { words }) => said(words("entry-note"), text),
  "limit-set"({ item, value, setBy, why: reason }, around) {
    const { words } = around;
    const limit = value === null ? words("entry-no-limit") : foundValue(value, words);
    return said(words.called(item), limit, words("entry-limit-said", { typed: setBy }), why(around, reason));
  },
  "card-issued": ({ paper }, { words }) =>
    said(words("entry-card-issued"), "", words("entry-card-said", { typed: words(`print-${paper}`) })),
  signed: ({ entry, meaning, name }, around) =>
    said(around.words("entry-signed-said", { what: around.words.called(meaning), given: name }), "", aboutEntry(entry, around)),
  "crossed-out": ({ entry, why: reason }, around) => said(aboutEntry(entry, around), "", why(around, reason)),
  linked: ({ as }, { words }) => said(words("entry-linked-said", { typed: words.called(as) })),
};

/** What an entry says. One of a newer program is shown as such, and nothing in it is guessed at. */
export function entryInWords(entry: Entry, around: Around): EntryText {
  const { words } = around;
  const { kind, kindVersion, body } = entry;
  if (!isKnown(kind) || kindVersion > kinds[kind].version)
    return { kind: words("entry-newer"), what: words("entry-newer-said"), value: "", beneath: [] };
  return { kind: words(`entry-${kind}`), ...(telling[kind] as (body: unknown, around: Around) => Said)(body, around) };
}
