import { uuidv7 } from "@ringwright/logbook";
import { useEffect, useState } from "preact/hooks";
import { randomBytes } from "../../device/chance.ts";
import { now } from "../../device/clock.ts";
import { Frame } from "../../frame/frame.tsx";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Person } from "../../kept/kept.ts";
import { Choice } from "../../parts/choice.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { useWords } from "../../parts/words.ts";

const nameDraft = "settings/name";

/** How this device shows things, and who is holding it. */
export function Settings() {
  const words = useWords();
  const { kept, drafts, preferences } = useWorkshop();
  const [person, setPerson] = useState<Person>();
  const [said, setSaid] = useState("");
  useEffect(() => {
    void kept.person().then(setPerson);
  }, []);
  const typed = drafts.text(nameDraft)?.trim() ?? "";
  const keepName = async () => {
    // A name may change; the opaque id in the entries stays with the person.
    const named: Person = { id: person?.id ?? uuidv7(now(), randomBytes(10)), name: typed };
    await kept.keepPerson(named);
    await drafts.drop(nameDraft);
    setPerson(named);
    setSaid(words("settings-name-kept", { name: typed }));
  };
  return (
    <Frame title={words("app-settings")}>
      <div class="ask">
        <Choice
          legend={words("settings-hands")}
          options={(["bare", "gloves"] as const).map((value) => ({
            value,
            says: words(`settings-${value}`),
            note: words(`settings-${value}-long`),
          }))}
          chosen={preferences.hands.value}
          onChoose={(hands) => void preferences.keepHands(hands)}
        />
        <Choice
          legend={words("app-units")}
          options={(["metric", "inch"] as const).map((value) => ({ value, says: words(`app-${value}-long`) }))}
          chosen={preferences.units.value}
          onChoose={(units) => void preferences.keepUnits(units)}
        />
        <Choice
          legend={words("settings-keys")}
          options={(["own", "device"] as const).map((value) => ({ value, says: words(`settings-keys-${value}`) }))}
          chosen={preferences.keys.value}
          onChoose={(keys) => void preferences.keepKeys(keys)}
        />
        <form
          class="ask"
          onSubmit={(event) => {
            event.preventDefault();
            if (typed !== "") void keepName();
            else setSaid(words("settings-name-missing"));
          }}
        >
          <TextField
            draft={nameDraft}
            label={words("app-who")}
            purpose="name"
            hint={person === undefined ? words("settings-name-hint") : words("settings-name-now", { name: person.name })}
          />
          <button type="submit" class="primary">
            {words("settings-keep-name")}
          </button>
          <p role="status">{said}</p>
        </form>
      </div>
    </Frame>
  );
}
