import { answerOf } from "@ringwright/core/plan";
import { bare, boxOfPlan, drawBoxSection } from "@ringwright/drawings";
import { type Next, nextFor } from "@ringwright/logbook";
import { useMemo, useRef, useState } from "preact/hooks";
import { now } from "../../device/clock.ts";
import { Frame } from "../../frame/frame.tsx";
import { Link } from "../../frame/link.tsx";
import { onBox, type StepName } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { type Box, boxOf, planOf } from "../../kept/box.ts";
import { Drawing } from "../../parts/drawing.tsx";
import { useInTurn } from "../../parts/turn.ts";
import { useWords } from "../../parts/words.ts";

/** Every box of the site, each with its small drawing and the one thing to do next. */
export function Site() {
  const words = useWords();
  const { kept } = useWorkshop();
  const [typed, setTyped] = useState("");
  const boxes = kept
    .boxes()
    .map((id) => boxOf(id, kept.state(id)))
    .sort((one, other) => (one.name ?? "").localeCompare(other.name ?? "", undefined, { numeric: true }));
  const asked = typed.trim().toLocaleLowerCase();
  const shown = boxes.filter(({ name = "", place = "" }) => `${name} ${place}`.toLocaleLowerCase().includes(asked));
  return (
    <Frame title={words("app-boxes")}>
      <div class="bar">
        <Link to={{ at: "new-box" }} class="primary">
          {words("app-new-box")}
        </Link>
        {boxes.length < 8 ? null : (
          <input
            type="search"
            aria-label={words("app-search")}
            placeholder={words("app-search")}
            value={typed}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
        )}
      </div>
      {boxes.length === 0 ? <p>{words("app-no-boxes")}</p> : null}
      {boxes.length > 0 && shown.length === 0 ? <p>{words("app-none-found", { typed })}</p> : null}
      <ul class="boxes">
        {shown.map((box) => (
          <Row key={box.id} box={box} />
        ))}
      </ul>
    </Frame>
  );
}

/** Where the next thing to do for a box is done. */
const screenFor: Readonly<Record<Next["does"], StepName>> = {
  "end-bridge": "logbook",
  settle: "logbook",
  measure: "measure",
  choose: "choose",
  fit: "fit",
  "run-in": "fit",
  round: "fit",
  repack: "fit",
};
const pressing: ReadonlySet<Next["does"]> = new Set(["end-bridge", "settle", "repack"]);

function Row({ box }: { readonly box: Box }) {
  const words = useWords();
  const row = useRef<HTMLLIElement>(null);
  // Planned and drawn when it comes into view, one box after the other: the list itself stands at once.
  const turn = useInTurn(row, () => ({ plan: planOf(box) }), [box]);
  const plan = turn?.plan;
  const drawing = useMemo(() => {
    const drawn = plan && boxOfPlan(plan, "");
    return drawn && bare(drawBoxSection(drawn));
  }, [plan]);
  const repackAtGap = answerOf(plan?.rings.set)?.lantern?.limit?.repackGap;
  const next = nextFor(box.state, now(), repackAtGap === undefined ? {} : { repackAtGap });
  return (
    <li ref={row}>
      <Link to={onBox(box.id, screenFor[next.does])} class="box">
        <div class="small-drawing">
          {drawing ? <Drawing of={drawing} idPrefix={`box-${box.id}`} /> : turn ? <p class="quiet">{words("app-drawing-none")}</p> : null}
        </div>
        <div>
          <h2>{box.name ?? words("app-unnamed")}</h2>
          {box.place === undefined ? null : <p class="quiet">{box.place}</p>}
          <p class={pressing.has(next.does) ? "attention" : undefined}>{turn ? words.sentence(next.says) : "\u00a0"}</p>
        </div>
      </Link>
    </li>
  );
}
