import type { Plan } from "@ringwright/core/plan";
import { type Cut, cuts, type EndRings, endRings } from "@ringwright/core/rings";
import { type StockSeries, stockSeries } from "@ringwright/core/section";
import type { Length } from "@ringwright/core/units";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { Choice } from "../../parts/choice.tsx";
import { Stepper } from "../../parts/stepper.tsx";
import { useWords } from "../../parts/words.ts";
import { angleAs, type Change, type Counts, countsOf, isSettled, lengthStepped, ringsChanged } from "./set-choices.ts";
import type { useChanges } from "./use-changes.ts";

type Changes = ReturnType<typeof useChanges>;
interface OfEditor {
  readonly box: Box;
  readonly plan: Plan;
  readonly changes: Changes;
}

/** Another set than the one worked out: counts, lantern ring, ends, spacer, stock, cut. Each tap is kept at once and can be taken back. */
export function SetEditor({ box, plan, changes }: OfEditor) {
  const words = useWords();
  const { change, undo, fault, said } = changes;
  return (
    <details class="set-editor">
      <summary>{words("rings-step-change")}</summary>
      <div class="ask">
        <Counting box={box} plan={plan} changes={changes} />
        <Ends box={box} plan={plan} changes={changes} />
        <Cutting box={box} plan={plan} changes={changes} />
      </div>
      <div class="bar" role="status">
        {undo.length === 0 ? null : (
          <button type="button" class="second" onClick={() => change(undo)}>
            {words("rings-step-undo")}
          </button>
        )}
        {said ? <span class="quiet">{words("rings-step-kept")}</span> : null}
      </div>
      {fault === undefined ? null : (
        <p class="chalk" role="alert">
          {words("app-cannot-keep", { why: fault })}
        </p>
      )}
    </details>
  );
}

/** How many rings, on which side of the lantern ring, and whether there is one. */
function Counting({ box, plan, changes: { change } }: OfEditor) {
  const words = useWords();
  const counts = countsOf(plan) ?? settledCounts(plan);
  const settled = isSettled(box.state, "set.rings");
  const to = (by: Parameters<typeof ringsChanged>[1]) => {
    const found = ringsChanged(counts, by);
    return found.length === 0 ? undefined : () => change(found);
  };
  const wanted = plan.survey.lantern?.wanted ?? counts.lantern;
  return (
    <>
      <div class="steppers">
        {counts.lantern ? (
          <Stepper
            label={words("rings-step-rings-below")}
            value={String(counts.below)}
            settled={isSettled(box.state, "lantern.ringsThroatSide")}
            onLess={to({ below: -1 })}
            onMore={to({ below: 1 })}
          />
        ) : null}
        <Stepper
          label={words(counts.lantern ? "rings-step-rings-above" : "rings-step-rings")}
          value={String(counts.above)}
          settled={settled}
          onLess={to({ above: -1 })}
          onMore={to({ above: 1 })}
        />
        {settled ? <AsWorkedOut fields={["set.rings", "lantern.ringsThroatSide"]} change={change} /> : null}
      </div>
      <Choice
        legend={words("rings-step-lantern")}
        options={[
          { value: "yes", says: words("rings-step-lantern-yes") },
          { value: "no", says: words("rings-step-lantern-no") },
        ]}
        chosen={wanted ? "yes" : "no"}
        onChoose={(value) => change([{ field: "lantern.wanted", value: value === "yes" }])}
      />
    </>
  );
}

/** The counts that were asked for, where no set can be made of them: so that they can be taken back. */
function settledCounts({ survey }: Plan): Counts {
  const below = survey.lantern?.ringsThroatSide ?? 0;
  return { below, above: Math.max(1, (survey.set?.rings ?? 1) - below), lantern: survey.lantern?.wanted === true };
}

/** Leaves something to the plan again. */
function AsWorkedOut({ fields, change }: { readonly fields: readonly string[]; readonly change: Changes["change"] }) {
  const words = useWords();
  return (
    <button type="button" class="workings" onClick={() => change(fields.map((field): Change => ({ field, value: null })))}>
      {words("rings-step-by-plan")}
    </button>
  );
}

/** End rings and spacer. */
function Ends({ box, plan, changes: { change } }: OfEditor) {
  const words = useWords();
  const system = useWorkshop().preferences.units.value;
  const { spacer: found } = plan.rings.set.ok ? plan.rings.set.value : {};
  const spacer: Length | undefined = plan.survey.set?.spacer ?? found;
  const settled = isSettled(box.state, "set.spacer");
  return (
    <>
      <Choice<EndRings>
        legend={words("rings-step-end-rings")}
        options={endRings.map((value) => ({ value, says: words(`rings-step-end-${value}`) }))}
        chosen={plan.survey.set?.endRings ?? "none"}
        onChoose={(value) => change([{ field: "set.endRings", value }])}
      />
      <div class="steppers">
        <Stepper
          label={words("rings-step-spacer")}
          value={
            spacer === undefined || spacer === 0
              ? words("rings-step-none")
              : words("rings-step-length", { value: { value: spacer, kind: "length", decimals: 1 } })
          }
          settled={settled}
          onLess={spacer ? () => change([{ field: "set.spacer", value: lengthStepped(spacer, -1, system) }]) : undefined}
          onMore={() => change([{ field: "set.spacer", value: lengthStepped(spacer, 1, system) }])}
        />
        {settled ? <AsWorkedOut fields={["set.spacer"]} change={change} /> : null}
      </div>
    </>
  );
}

/** The stock that is kept, and how the rings are cut. */
function Cutting({ plan, changes: { change } }: OfEditor) {
  const words = useWords();
  const { set = {} } = plan.survey;
  const cut = plan.rings.cut.ok ? plan.rings.cut.value : undefined;
  const slanting = cut !== undefined && cut.cutLength > cut.length.mean;
  const angles = [45, 30];
  return (
    <>
      <Choice<StockSeries>
        legend={words("rings-step-series")}
        options={stockSeries.map((value) => ({ value, says: words(`rings-step-series-${value}`) }))}
        chosen={set.series ?? "both"}
        onChoose={(value) => change([{ field: "set.series", value }])}
      />
      <Choice<Cut>
        legend={words("rings-step-cut")}
        options={cuts.map((value) => ({ value, says: words(`rings-step-cut-${value}`) }))}
        chosen={slanting ? "skive" : "butt"}
        onChoose={(value) => change([{ field: "set.cut", value }])}
      />
      {slanting ? (
        <Choice<string>
          legend={words("rings-step-angle")}
          options={angles.map((degrees) => ({ value: String(degrees), says: `${degrees}°` }))}
          chosen={angles.map(String).find((degrees) => Math.abs(angleAs(Number(degrees)).value - cut.angle) < 1e-6)}
          onChoose={(value) => change([{ field: "set.angle", value: angleAs(Number(value)) }])}
        />
      ) : null}
    </>
  );
}
