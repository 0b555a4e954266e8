import { answerOf, type Plan } from "@ringwright/core/plan";
import type { PlanPage } from "./page.ts";

/** Pressure in the box, the flush that beats it, boiling and air. */
export function pressureText(page: PlanPage, { pressures, survey }: Plan): void {
  const box = answerOf(pressures.box);
  const flush = answerOf(pressures.flush);
  if (!box) return;
  page.heading("plan-heading-pressure");
  page.row(page.words("plan-box-pressure"), page.band("pressure", box.band, { digits: 2 }), page.words(`plan-by-${box.basis}`));
  if (flush) {
    page.row(
      page.words("plan-flush-setting"),
      page.band("pressure", flush.setting, { digits: 2 }),
      page.words("plan-flush-margin", { margin: page.band("pressure-difference", flush.margin, { digits: 2 }) }),
    );
    if (survey.flush?.set !== undefined && flush.present)
      page.row(
        page.words("plan-flush-now"),
        page.value("pressure", survey.flush.set, { digits: 2 }),
        page.words(`plan-flush-${flush.present}`),
        { by: "measured" },
      );
    if (survey.flush?.supply !== undefined && flush.reaches && flush.reaches !== "yes")
      page.row(
        page.words("plan-flush-supply"),
        page.value("pressure", survey.flush.supply, { digits: 2 }),
        page.words(`plan-flush-reach-${flush.reaches}`),
        { by: "measured" },
      );
  }
  const vapour = answerOf(pressures.vapour);
  if (vapour)
    page.row(
      page.words("plan-vapour"),
      page.value("pressure-difference", vapour.margin, { digits: 2 }),
      page.words(`plan-vapour-${vapour.verdict}`),
    );
  const air = answerOf(pressures.air);
  if (air)
    page.row(
      page.words("plan-air"),
      page.words(`plan-air-${air.running}`),
      air.standing === undefined ? undefined : page.words("plan-air-standing", { state: page.words(`plan-air-${air.standing}`) }),
    );
  page.workings(page.words("plan-heading-pressure"), pressures.box, pressures.flush, pressures.vapour, pressures.air);
}

/** How fast it runs, what heat it makes, what carries it, and what others say of the drip. */
export function heatText(page: PlanPage, { chosen, heat }: Plan): void {
  const speed = answerOf(chosen.speed)?.speed;
  const power = answerOf(heat.power);
  const drip = answerOf(heat.drip);
  if (speed === undefined && !drip) return;
  page.heading("plan-heading-heat");
  if (speed !== undefined) page.row(page.words("plan-speed"), page.value("speed", speed, { digits: 2 }));
  if (power) page.row(page.words("plan-power"), page.band("power", power.band, { digits: 2 }), page.words("plan-power-note"));
  const flow = answerOf(heat.flush)?.flow;
  if (flow !== undefined)
    page.row(page.words("plan-flush-flow"), page.value("flow", flow, { digits: 2 }), page.words("plan-flush-flow-note"));
  const growth = answerOf(heat.growth);
  if (growth && growth.free > 0) page.row(page.words("plan-growth"), page.length(growth.free, 2), page.words("plan-growth-note"));
  if (drip?.spread) {
    const note = drip.flow
      ? page.words("plan-drip-flow", { flow: page.band("flow", drip.flow, { digits: 2, unit: "mL/min" }) })
      : undefined;
    page.row(
      page.words("plan-drip"),
      page.words("plan-drip-unit", { low: Math.round(drip.spread.low), high: Math.round(drip.spread.high) }),
      note,
    );
  }
  if (drip) page.line(page.words("plan-drip-note"));
  if (drip?.zeroAllowed) page.line(page.words("plan-drip-zero"));
  page.workings(page.words("plan-heading-heat"), chosen.speed, heat.power, heat.flush, heat.growth, heat.drip);
}
