import { useEffect, useState } from "preact/hooks";
import { facts, loadRest } from "../../facts/facts.ts";
import { useWords } from "../../parts/words.ts";
import type { FieldOf } from "./answer-field.tsx";

/** Ids of everything in a list of facts. */
function idsOf(list: "fluids" | "sleeves"): readonly string[] {
  const { materials } = facts.value.all;
  return [...(list === "fluids" ? materials.fluids : materials.sleeves)].map((one) => (typeof one === "string" ? one : one.id));
}

/** One or several out of a long list, found by typing part of the name. */
export function ListField({
  id,
  draft,
  onDraft,
  describedBy,
  name,
  dense,
  of,
  most,
}: FieldOf & { readonly of: "fluids" | "sleeves"; readonly most: number }) {
  const words = useWords();
  const [typed, setTyped] = useState("");
  useEffect(() => void loadRest(), []);
  const chosen = most === 1 ? (draft.text ? [draft.text] : []) : (draft.chosen ?? []);
  const asked = typed.trim().toLocaleLowerCase();
  const found = idsOf(of).filter((one) => !chosen.includes(one) && (asked === "" || words.called(one).toLocaleLowerCase().includes(asked)));
  const choose = (one: string) => {
    setTyped("");
    onDraft(most === 1 ? { ...draft, text: one } : { ...draft, chosen: [...chosen, one].slice(0, most) });
  };
  const leave = (one: string) => {
    if (most > 1) {
      onDraft({ ...draft, chosen: chosen.filter((other) => other !== one) });
      return;
    }
    const { text: _, ...rest } = draft;
    onDraft(rest);
  };
  return (
    <div class="long-list">
      {chosen.length === 0 ? null : (
        <ul class="taken" aria-label={words("measure-chosen")}>
          {chosen.map((one) => (
            <li key={one}>
              <button type="button" class="taken-one measured" onClick={() => leave(one)}>
                {words.called(one)} <span aria-hidden="true">×</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {dense ? (
        <select
          id={id}
          aria-label={name}
          aria-describedby={describedBy}
          value=""
          onChange={({ currentTarget }) => choose(currentTarget.value)}
        >
          <option value="" disabled>
            {words("measure-find")}
          </option>
          {found.map((one) => (
            <option key={one} value={one}>
              {words.called(one)}
            </option>
          ))}
        </select>
      ) : (
        <>
          <input
            id={id}
            type="search"
            aria-label={name === undefined ? words("measure-find") : `${name} ${words("measure-find")}`}
            aria-describedby={describedBy}
            placeholder={words("measure-find")}
            value={typed}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
          {found.length === 0 ? <p role="status">{words("measure-none-found", { typed })}</p> : null}
          <div class="found">
            {found.map((one) => (
              <button key={one} type="button" class="second" onClick={() => choose(one)}>
                {words.called(one)}
              </button>
            ))}
          </div>
        </>
      )}
    </div>
  );
}
