import type { Verdict } from "@ringwright/core/condition";
import { parseQuantity, shownUnit } from "@ringwright/core/units";
import type { Measured } from "@ringwright/logbook";
import { useState } from "preact/hooks";
import { useWorkshop } from "../frame/workshop.ts";
import { readLimit } from "./read-limit.ts";
import { TextField } from "./text-field.tsx";
import { useWords } from "./words.ts";

/** The limit a site sets for one point of a box: how much, who says so, and why. */
export function SetLimit({ box, verdict, unit }: { readonly box: string; readonly verdict: Verdict; readonly unit: "m" | "1" }) {
  const words = useWords();
  const { kept, drafts, preferences } = useWorkshop();
  const [asked, setAsked] = useState(false);
  const [said, setSaid] = useState(false);
  const [fault, setFault] = useState<string>();
  const draft = (name: string) => `box/${box}/limits/${verdict.id}/${name}`;
  const typed = (name: string) => drafts.text(draft(name))?.trim() ?? "";
  const limit = readLimit(typed("value"), unit, (text) => parseQuantity(text, "length", shownUnit("length", preferences.units.value)));
  const has = verdict.houseLimit !== undefined;
  const write = async (value: null | number | Measured, setBy: string, why: string) => {
    try {
      await kept.write("limit-set", box, { item: verdict.id, value, setBy, ...(why === "" ? {} : { why }) });
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
      return;
    }
    for (const name of ["value", "by", "why"]) await drafts.drop(draft(name));
    setFault(undefined);
    setAsked(false);
    setSaid(true);
  };
  const keep = () => {
    setAsked(true);
    setSaid(false);
    if (limit === undefined || typed("by") === "") return;
    void write(limit, typed("by"), typed("why"));
  };
  const like = unit === "m" ? "0.05 mm" : "250";
  return (
    <details class="house-limit">
      <summary>{words(has ? "verdict-house-change" : "verdict-house-set")}</summary>
      <form
        class="ask"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <TextField
          draft={draft("value")}
          label={words("verdict-house-value")}
          hint={words(unit === "m" ? "verdict-house-value-hint" : "verdict-house-number-hint")}
          missing={asked && limit === undefined ? words("verdict-house-unread", { given: typed("value"), like }) : undefined}
        />
        <TextField
          draft={draft("by")}
          label={words("verdict-house-by")}
          missing={asked && typed("by") === "" ? words("verdict-house-no-one") : undefined}
        />
        <TextField draft={draft("why")} label={words("verdict-house-why-label")} />
        <div class="bar">
          <button type="submit" class="second">
            {words("verdict-house-keep")}
          </button>
          {has ? (
            <button type="button" class="second" onClick={() => void write(null, verdict.houseLimit?.setBy ?? "", "")}>
              {words("verdict-house-drop")}
            </button>
          ) : null}
        </div>
      </form>
      {fault === undefined ? null : (
        <p class="chalk" role="alert">
          {words("app-cannot-keep", { why: fault })}
        </p>
      )}
      <p role="status" class="quiet">
        {said ? words("verdict-kept") : ""}
      </p>
    </details>
  );
}
