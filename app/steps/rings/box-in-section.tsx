import { glandMoved, type Plan } from "@ringwright/core/plan";
import { quantity } from "@ringwright/core/units";
import { type BoxDrawing, boxMoved, boxOfPlan, drawBoxSection } from "@ringwright/drawings";
import { useMemo } from "preact/hooks";
import { go, onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { Drawing } from "../../parts/drawing.tsx";
import { type Grip, MovingDrawing } from "../../parts/moving-drawing.tsx";
import { useWords } from "../../parts/words.ts";
import { fieldOfFigure } from "./figure-field.ts";
import { useGland } from "./gland.ts";
import { SetTable } from "./tables.tsx";
import { onWay, type Way, wayOf } from "./travel.ts";
import { TravelControl } from "./travel-control.tsx";

/** The box to scale; its follower can be dragged or stepped along its way, and ring set and port follow. */
export function BoxInSection({ box, plan }: { readonly box: Box; readonly plan: Plan }) {
  const words = useWords();
  const system = useWorkshop().preferences.units.value;
  const drawn = useMemo(() => boxOfPlan(plan, box.name ?? ""), [plan, box.name]);
  const rest = useMemo(() => drawn && drawBoxSection(drawn), [drawn]);
  const way = useMemo(() => drawn && wayOf(plan, drawn, system), [plan, drawn, system]);
  if (!drawn || !rest) return null;
  const style = plan.chosen.style?.ok ? plan.chosen.style.value : undefined;
  return (
    <section class="rings-box" aria-label={words("rings-step-box")}>
      {way ? <Moving box={box.id} plan={plan} drawn={drawn} rest={rest} way={way} /> : <Drawing of={rest} idPrefix="rings" />}
      {style === undefined ? null : <p class="quiet">{words("rings-step-drawn-as", { family: words.called(style.family) })}</p>}
    </section>
  );
}

function Moving({
  box,
  plan,
  drawn,
  rest,
  way,
}: {
  readonly box: string;
  readonly plan: Plan;
  readonly drawn: BoxDrawing;
  readonly rest: ReturnType<typeof drawBoxSection>;
  readonly way: Way;
}) {
  const { gland, settled, put, glide, hold, letGo } = useGland(way);
  const moved = useMemo(() => glandMoved(plan, gland), [plan, gland]);
  const now = useMemo(() => (gland > 0 && moved ? drawBoxSection(boxMoved(drawn, moved)) : rest), [drawn, rest, moved]);
  const nose = useMemo(() => Math.min(...(now.shapes.find(({ id }) => id === "follower-upper")?.points ?? []).map(([x]) => x)), [now]);
  const grip: Grip = {
    // A thumb may take the follower a little before its nose.
    holds: (x) => x > nose - 0.1 * Math.abs(nose),
    take: hold,
    // In is to the left: towards the throat.
    pull: (by) => put(onWay(way, hold.from.current - quantity("length", by, "mm"))),
    letGo,
  };
  const ask = (figure: string) => {
    const field = fieldOfFigure(figure, drawn);
    if (field !== undefined) go(onBox(box, "measure", field));
  };
  return (
    <>
      <MovingDrawing rest={rest} now={now} settled={settled} grip={grip} onFigure={ask} idPrefix="rings" />
      <TravelControl way={way} moved={moved ?? { gland, share: 0 }} put={put} glide={glide} letGo={letGo} />
      <SetTable plan={plan} gland={gland} />
    </>
  );
}
