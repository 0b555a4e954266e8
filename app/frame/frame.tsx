import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { reached } from "../kept/exchange.ts";
import { useWords } from "../parts/words.ts";
import { Link } from "./link.tsx";
import { focusOn, onBox, type StepName, steps } from "./route.ts";
import { useWorkshop } from "./workshop.ts";

/** What stands round every screen: where the reader is, the steps of the work, and where things are kept. */
export function Frame({
  title,
  place,
  box,
  step,
  children,
}: {
  readonly title: string;
  readonly place?: string | undefined;
  readonly box?: string;
  readonly step?: StepName;
  readonly children: ComponentChildren;
}) {
  const words = useWords();
  const { preferences } = useWorkshop();
  const work = useRef<HTMLElement>(null);
  useEffect(() => {
    const parts = [title, ...(step === undefined ? [] : [words(`app-step-${step}`)]), words("app-title")];
    document.title = [...new Set(parts)].join(" · ");
    focusOn(work.current);
  }, [title, box, step]);
  return (
    <div class="frame" data-hands={preferences.hands.value}>
      <a class="skip" href="#work">
        {words("app-skip")}
      </a>
      <header>
        <div class="ways">
          {box === undefined && title === words("app-boxes") ? null : (
            <Link to={{ at: "site" }} class="back">
              {words("app-all-boxes")}
            </Link>
          )}
          <Link to={{ at: "settings" }} class="back">
            {words("app-settings")}
          </Link>
        </div>
        <div class="where">
          <h1>{title}</h1>
          {place === undefined ? null : <p class="quiet">{place}</p>}
        </div>
        <div class="how">
          <Units />
          <Hands />
          <Whereabouts />
        </div>
      </header>
      {box === undefined ? null : (
        <nav aria-label={words("app-steps")} class="steps">
          {steps.map((name) => (
            <Link key={name} to={onBox(box, name)} current={name === step}>
              {words(`app-step-${name}`)}
            </Link>
          ))}
        </nav>
      )}
      <main id="work" tabIndex={-1} ref={work}>
        {children}
      </main>
    </div>
  );
}

/** Millimetres or inches, at a tap. */
function Units() {
  const words = useWords();
  const { preferences } = useWorkshop();
  const chosen = preferences.units.value;
  return (
    <fieldset class="units" aria-label={words("app-units")}>
      {(["metric", "inch"] as const).map((system) => (
        <button
          key={system}
          type="button"
          aria-pressed={chosen === system}
          aria-label={`${words(`app-${system}`)}: ${words(`app-${system}-long`)}`}
          onClick={() => void preferences.keepUnits(system)}
        >
          {words(`app-${system}`)}
        </button>
      ))}
    </fieldset>
  );
}

/** Larger keys and buttons for gloved hands, at a tap. */
function Hands() {
  const words = useWords();
  const { preferences } = useWorkshop();
  const gloves = preferences.hands.value === "gloves";
  return (
    <button
      type="button"
      class="hands"
      aria-pressed={gloves}
      title={words("app-gloves-long")}
      onClick={() => void preferences.keepHands(gloves ? "bare" : "gloves")}
    >
      {words("app-gloves")}
    </button>
  );
}

/** Where the newest entries are. */
function Whereabouts() {
  const words = useWords();
  const { kept } = useWorkshop();
  const waiting = kept.unsent.value;
  const signal = reached.value;
  const said =
    signal === "no"
      ? words("app-no-signal")
      : waiting > 0
        ? words("app-kept-here", { count: waiting })
        : signal === "yes"
          ? words("app-sent")
          : words("app-looking");
  return (
    <p class="quiet whereabouts" role="status">
      {said}
    </p>
  );
}
