import { boxOf } from "../kept/box.ts";
import { useWords } from "../parts/words.ts";
import { Measure } from "../steps/measure/measure.tsx";
import { NewBox } from "../steps/site/new-box.tsx";
import { Settings } from "../steps/site/settings.tsx";
import { Site } from "../steps/site/site.tsx";
import { Frame } from "./frame.tsx";
import { later } from "./later.tsx";
import { here } from "./route.ts";
import { useWorkshop } from "./workshop.ts";

/** Measuring comes with the page; what follows comes when it is first gone to. */
const screens = {
  measure: Measure,
  choose: later(() => import("../steps/choose/choose.tsx").then(({ Choose }) => Choose)),
  rings: later(() => import("../steps/rings/rings.tsx").then(({ Rings }) => Rings)),
  fit: later(() => import("../steps/fit/fit.tsx").then(({ Fit }) => Fit)),
  logbook: later(() => import("../steps/logbook/logbook.tsx").then(({ Logbook }) => Logbook)),
};

/** The screen for where the reader is. */
export function App() {
  const words = useWords();
  const { kept } = useWorkshop();
  const route = here();
  if (route.at === "site") return <Site />;
  if (route.at === "new-box") return <NewBox />;
  if (route.at === "settings") return <Settings />;
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
