import { isRefused, type Plan } from "@ringwright/core/plan";
import { drawCutStrip, drawJointClock, drawStressCurve, jointClockOfPlan, pushOfPlan, stripOfPlan } from "@ringwright/drawings";
import { inputName } from "@ringwright/words";
import { type PlanSection, planInWords } from "@ringwright/words/plan";
import { useMemo } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { OfBox } from "../../frame/screen.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { CardButton } from "../../parts/card-button.tsx";
import { Drawing } from "../../parts/drawing.tsx";
import { Section } from "../../parts/section.tsx";
import { useWords } from "../../parts/words.ts";
import { AsMeasured } from "./as-measured.tsx";
import { BoxInSection } from "./box-in-section.tsx";
import { Minded } from "./minded.tsx";
import { SetEditor } from "./set-editor.tsx";
import { SetInWords } from "./set-in-words.tsx";
import { StockChoice } from "./stock-choice.tsx";
import { JointTable, PushTable } from "./tables.tsx";
import { useChanges } from "./use-changes.ts";

/** The rings of a box: the section drawn to scale with its follower to move, cut list, lantern ring, joints, and what a push does. */
export function Rings({ box }: OfBox) {
  const words = useWords();
  const { planned } = box;
  if (planned.kind === "planned" && planned.answer.ok) return <Planned box={box} plan={planned.answer.value} />;
  return (
    <>
      <p>{words("rings-step-not-yet")}</p>
      {planned.kind === "planned" && !planned.answer.ok ? <p class="chalk">{words.sentence(planned.answer.refusal.says)}</p> : null}
      <Link to={onBox(box.id, "measure")} class="primary">
        {words("rings-step-go-measure")}
      </Link>
    </>
  );
}

function Planned({ box, plan }: { readonly box: Box; readonly plan: Plan }) {
  const words = useWords();
  const system = useWorkshop().preferences.units.value;
  const changes = useChanges(box);
  const { planned } = box;
  const told = useMemo(
    () => (planned.kind === "planned" && planned.answer.ok ? planInWords(planned.answer, system).sections : []),
    [planned, system],
  );
  const section = (id: string) => told.find((one) => one.id === id);
  const laid = plan.rings.set.ok;
  return (
    <div class="rings">
      {laid ? <BoxInSection box={box} plan={plan} /> : <NoSet box={box} plan={plan} />}
      <Push plan={plan} told={section("gland") ?? section("stem")} />
      <div class="rings-cut">
        <Told of={section("cut")} />
      </div>
      {section("lantern") ? (
        <div class="rings-lantern">
          <Told of={section("lantern")} />
        </div>
      ) : null}
      <Joints plan={plan} />
      <div class="rings-stock">
        <AsMeasured box={box} plan={plan} of={section("section")} />
        <StockChoice box={box} plan={plan} changes={changes} />
        <Strip plan={plan} />
      </div>
      <div class="rings-set">
        <SetInWords plan={plan} of={section("set")} />
        <Minded box={box} plan={plan} />
        <SetEditor box={box} plan={plan} changes={changes} />
      </div>
      {laid ? (
        <div class="bar">
          <Link to={onBox(box.id, "fit")} class="primary">
            {words("rings-step-fit")}
          </Link>
          <CardButton box={box} />
        </div>
      ) : null}
    </div>
  );
}

function Told({ of: section }: { readonly of: PlanSection | undefined }) {
  return section ? <Section of={section} /> : null;
}

/** Why no set is laid out, and where to go for what it waits for. */
function NoSet({ box, plan }: { readonly box: Box; readonly plan: Plan }) {
  const words = useWords();
  const { set } = plan.rings;
  if (set.ok) return null;
  const needs = isRefused(set)
    ? []
    : [...new Set([plan.box.shaft, plan.box.bore].flatMap((part) => (!part.ok && "needs" in part ? part.needs : [])))];
  return (
    <section class="rings-box">
      {isRefused(set) ? <p class="chalk">{words.sentence(set.refusal.says)}</p> : <p>{words("rings-step-not-yet")}</p>}
      {needs.length === 0 ? null : (
        <ul>
          {needs.map((field) => (
            <li key={field}>
              <Link to={onBox(box.id, "measure", field)}>{inputName(field)}</Link>
            </li>
          ))}
        </ul>
      )}
      <Link to={onBox(box.id, "measure")} class="primary">
        {words("rings-step-go-measure")}
      </Link>
    </section>
  );
}

/** How much of a further push reaches each ring, standing and turning. */
function Push({ plan, told }: { readonly plan: Plan; readonly told: PlanSection | undefined }) {
  const words = useWords();
  const drawing = useMemo(() => {
    const push = pushOfPlan(plan);
    return push && drawStressCurve(push);
  }, [plan]);
  if (!drawing && !told) return null;
  return (
    <div class="rings-push">
      {drawing ? (
        <section>
          <h2>{words("rings-step-push")}</h2>
          <Drawing of={drawing} idPrefix="push" widest={620} />
          <PushTable plan={plan} />
        </section>
      ) : null}
      <Told of={told} />
    </div>
  );
}

/** Where the joint of each ring goes, as the fitter faces it. */
function Joints({ plan }: { readonly plan: Plan }) {
  const words = useWords();
  const drawing = useMemo(() => {
    const joints = jointClockOfPlan(plan);
    return joints && drawJointClock(joints);
  }, [plan]);
  if (!drawing || !plan.rings.set.ok) return null;
  return (
    <section class="rings-joints">
      <h2>{words("rings-step-joints")}</h2>
      <Drawing of={drawing} idPrefix="joints" widest={340} />
      <JointTable joints={plan.rings.set.value.joints} />
    </section>
  );
}

/** One strip as it is cut, to scale. */
function Strip({ plan }: { readonly plan: Plan }) {
  const words = useWords();
  const drawing = useMemo(() => {
    const strip = stripOfPlan(plan);
    return strip && drawCutStrip(strip);
  }, [plan]);
  if (!drawing) return null;
  return (
    <section>
      <h2>{words("rings-step-strip")}</h2>
      <Drawing of={drawing} idPrefix="strip" widest={560} />
    </section>
  );
}
