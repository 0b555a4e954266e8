import { NumberInput } from "../../parts/quantity/number-input.tsx";
import { QuantityInput } from "../../parts/quantity/quantity-input.tsx";
import { nothingTyped } from "../../parts/quantity/typing.ts";
import { useWords } from "../../parts/words.ts";
import { ClockGaps } from "./clock-gaps.tsx";
import type { Draft } from "./draft.ts";
import { ListField } from "./list-field.tsx";
import { OptionsField } from "./options-field.tsx";
import type { Question } from "./question.ts";
import { Readings } from "./readings.tsx";

/** What every field of an answer is given. */
export interface FieldOf {
  readonly id: string;
  readonly question: Question;
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
  readonly describedBy: string | undefined;
  /** Which of the numbers is wrong. */
  readonly wrongAt: number | undefined;
  readonly onEnter: (() => void) | undefined;
  /** What the field is called, where no label of its own stands beside it. */
  readonly name: string | undefined;
  /** On the sheet: small, and without words of its own. */
  readonly dense: boolean;
}

/** The fields that a question is answered in, the same on both screens. */
export function AnswerField(field: FieldOf) {
  const { question, draft, onDraft } = field;
  const known = { ...draft, unknown: undefined };
  const said = (said: Draft) => onDraft(without(said));
  const given = { ...field, draft: without(known), onDraft: said };
  switch (question.asks.is) {
    case "dimension":
      return <Readings {...given} />;
    case "quantity":
      return <OneQuantity {...given} kind={question.asks.kind} common={question.asks.common ?? []} />;
    case "clock-gaps":
      return <ClockGaps {...given} />;
    case "count":
      return <PlainNumber {...given} kind="count" />;
    case "number":
      return <PlainNumber {...given} kind="number" />;
    case "text":
      return <Text {...given} common={question.asks.common ?? []} />;
    case "list":
      return <ListField {...given} of={question.asks.of} most={question.asks.most} />;
    default:
      return <OptionsField {...given} />;
  }
}

/** Answering takes back a "don't know". */
function without({ unknown: _, ...draft }: Omit<Draft, "unknown"> & { readonly unknown?: true | undefined }): Draft {
  return draft;
}

function OneQuantity({
  id,
  draft,
  onDraft,
  describedBy,
  wrongAt,
  onEnter,
  name,
  dense,
  kind,
  common,
}: FieldOf & { readonly kind: Parameters<typeof QuantityInput>[0]["kind"]; readonly common: readonly string[] }) {
  const typing = draft.typed[0] ?? nothingTyped;
  return (
    <>
      <QuantityInput
        id={id}
        typing={typing}
        kind={kind}
        name={name}
        describedBy={describedBy}
        wrong={wrongAt !== undefined}
        first={!dense}
        onType={(now) => onDraft({ ...draft, typed: [now] })}
        onEnter={onEnter}
      />
      {dense ? null : (
        <Common sizes={common} chosen={typing.text} onChoose={(text) => onDraft({ ...draft, typed: [{ text, unit: "" }] })} />
      )}
    </>
  );
}

function PlainNumber({
  id,
  draft,
  onDraft,
  describedBy,
  wrongAt,
  onEnter,
  name,
  dense,
  kind,
}: FieldOf & { readonly kind: "count" | "number" }) {
  return (
    <span class="quantity">
      <NumberInput
        id={id}
        text={draft.text ?? ""}
        kind={kind}
        unit=""
        name={name}
        describedBy={describedBy}
        wrong={wrongAt !== undefined}
        first={!dense}
        onType={(text) => onDraft({ ...draft, text })}
        onEnter={onEnter}
      />
    </span>
  );
}

function Text({ id, draft, onDraft, describedBy, onEnter, name, dense, common }: FieldOf & { readonly common: readonly string[] }) {
  return (
    <>
      <input
        id={id}
        type="text"
        maxLength={200}
        autoComplete="off"
        value={draft.text ?? ""}
        aria-label={name}
        aria-describedby={describedBy}
        onInput={({ currentTarget }) => onDraft({ ...draft, text: currentTarget.value })}
        onKeyDown={(event) => {
          if (event.key !== "Enter" || !onEnter) return;
          event.preventDefault();
          onEnter();
        }}
      />
      {dense ? null : <Common sizes={common} chosen={draft.text ?? ""} onChoose={(text) => onDraft({ ...draft, text })} />}
    </>
  );
}

/** Common sizes, one tap each. */
function Common({
  sizes,
  chosen,
  onChoose,
}: {
  readonly sizes: readonly string[];
  readonly chosen: string;
  readonly onChoose: (size: string) => void;
}) {
  const words = useWords();
  if (sizes.length === 0) return null;
  return (
    <fieldset class="common" aria-label={words("measure-common")}>
      {sizes.map((size) => (
        <button key={size} type="button" class="second" aria-pressed={chosen === size} onClick={() => onChoose(size)}>
          {size}
        </button>
      ))}
    </fieldset>
  );
}
