import type { ComponentType } from "preact";
import { boxOf } from "../kept/box.ts";
import { useWords } from "../parts/words.ts";
import { Choose } from "../steps/choose/choose.tsx";
import { Fit } from "../steps/fit/fit.tsx";
import { Logbook } from "../steps/logbook/logbook.tsx";
import { Measure } from "../steps/measure/measure.tsx";
import { Rings } from "../steps/rings/rings.tsx";
import { NewBox } from "../steps/site/new-box.tsx";
import { Site } from "../steps/site/site.tsx";
import { Frame } from "./frame.tsx";
import { here, type StepName } from "./route.ts";
import type { OfBox } from "./screen.ts";
import { useWorkshop } from "./workshop.ts";

const screens: Readonly<Record<StepName, ComponentType<OfBox>>> = {
  measure: Measure,
  choose: Choose,
  rings: Rings,
  fit: Fit,
  logbook: Logbook,
};

/** The screen for where the reader is. */
export function App() {
  const words = useWords();
  const { kept } = useWorkshop();
  const route = here();
  if (route.at === "site") return <Site />;
  if (route.at === "new-box") return <NewBox />;
  if (route.at !== "box") return <Frame title={words("app-title")}>{words("app-nowhere")}</Frame>;
  if (!kept.boxes().includes(route.box)) return <Frame title={words("app-title")}>{words("app-no-box")}</Frame>;
  const box = boxOf(route.box, kept.state(route.box));
  const Screen = screens[route.step];
  return (
    <Frame title={box.name ?? words("app-unnamed")} place={box.place} box={route.box} step={route.step}>
      <Screen box={box} rest={route.rest} />
    </Frame>
  );
}
