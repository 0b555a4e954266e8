import { motions, releases, zones } from "@ringwright/core/box";
import { uuidv7 } from "@ringwright/logbook";
import { useState } from "preact/hooks";
import { randomBytes } from "../../device/chance.ts";
import { now } from "../../device/clock.ts";
import { Frame } from "../../frame/frame.tsx";
import { go, onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { Choice } from "../../parts/choice.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";

const prefix = "new-box/";

/** A box that was not in the logbook yet: its name, and the questions that come before all others. */
export function NewBox() {
  const words = useWords();
  const { kept, drafts } = useWorkshop();
  const [asked, setAsked] = useState(false);
  const [fault, setFault] = useState<string>();
  const said = drafts.under(prefix);
  const name = said.get("name")?.trim() ?? "";
  const choose = (field: string) => (value: string) => void drafts.put(`${prefix}${field}`, value);
  const keep = async () => {
    setAsked(true);
    const motion = said.get("motion");
    if (name === "" || motion === undefined) return;
    const box = uuidv7(now(), randomBytes(10));
    try {
      for (const field of ["name", "place", "motion", "release", "zone"]) {
        const value = said.get(field)?.trim() ?? "";
        if (value !== "") await kept.write("box-described", box, { field, value });
      }
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
      return;
    }
    for (const field of said.keys()) await drafts.drop(`${prefix}${field}`);
    go(onBox(box, "measure"), true);
  };
  const zone = said.get("zone");
  return (
    <Frame title={words("app-new-box")}>
      <form
        class="ask"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <TextField
          draft={`${prefix}name`}
          label={words("app-name-label")}
          hint={words("app-name-hint")}
          missing={asked && name === "" ? words("app-name-missing") : undefined}
        />
        <TextField draft={`${prefix}place`} label={words("app-place-label")} hint={words("app-place-hint")} />
        <Choice
          legend={words("app-motion-label")}
          options={motions.map((value) => ({ value, says: words(`app-motion-${value}`) }))}
          chosen={motions.find((one) => one === said.get("motion"))}
          onChoose={choose("motion")}
          missing={asked && said.get("motion") === undefined ? words("app-motion-missing") : undefined}
        />
        <Choice
          legend={words("app-release-label")}
          options={releases.map((value) => ({ value, says: words(value === "unknown" ? "app-dont-know" : `app-release-${value}`) }))}
          chosen={releases.find((one) => one === said.get("release"))}
          onChoose={choose("release")}
        />
        <Choice
          legend={words("app-zone-label")}
          options={zones.map((value) => ({ value, says: words(value === "unknown" ? "app-dont-know" : `app-zone-${value}`) }))}
          chosen={zones.find((one) => one === zone)}
          onChoose={choose("zone")}
        />
        {zone === "hazardous" || zone === "unknown" ? <p class="chalk">{words("app-zone-unknown")}</p> : null}
        {fault === undefined ? null : (
          <p class="chalk" role="alert">
            {words("app-cannot-keep", { why: fault })}
          </p>
        )}
        <button type="submit" class="primary">
          {words("app-start-box")}
        </button>
      </form>
    </Frame>
  );
}
