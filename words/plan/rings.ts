import { isStem } from "@ringwright/core/box";
import { answerOf, type Plan } from "@ringwright/core/plan";
import { formatQuantity, type Length } from "@ringwright/core/units";
import type { PlanPage } from "./page.ts";

const setOf = (plan: Plan) => answerOf(plan.rings.set);

/** One part of the set: what it is, how high, where its joint goes, and what a depth gauge reads once it is home. */
export interface SetRow {
  readonly part: string;
  readonly height: string;
  readonly joint?: string;
  readonly depth?: string;
}

/** The set from the throat to the gland, part by part. */
export function setRows(page: PlanPage, plan: Plan): readonly SetRow[] {
  return (setOf(plan)?.parts ?? []).map(({ kind, number, height, joint, depthLeft }) => ({
    part: page.words(`plan-${kind}`, number === undefined ? {} : { number }),
    height: page.length(height),
    ...(joint === undefined ? {} : { joint: String(joint) }),
    ...(depthLeft === undefined ? {} : { depth: page.length(depthLeft) }),
  }));
}

/** The set, part by part, with joints and what a depth gauge reads. */
export function setText(page: PlanPage, plan: Plan): void {
  const set = setOf(plan);
  if (!set) return;
  page.heading("plan-heading-set");
  page.line(page.words(isStem(plan.survey.motion) ? "plan-set-order-stem" : "plan-set-order"));
  for (const row of setRows(page, plan)) page.row(row.part, row.height, place(page, row));
  page.line(page.words("plan-joints", { datum: page.words(`plan-datum-${plan.survey.datum ?? "top"}`) }));
  page.row(page.words("plan-ring-height"), page.uncertain(set.ringHeight, 1));
  page.row(page.words("plan-set-height"), page.length(set.setHeight));
  if (set.entry) page.row(page.words("plan-entry"), page.uncertain(set.entry, 1));
  if (set.glandGap !== undefined) page.row(page.words("plan-gland-gap"), page.length(set.glandGap));
  if (set.travel !== undefined)
    page.row(page.words("plan-travel"), page.length(set.travel), set.binding ? page.words(`plan-travel-${set.binding}`) : undefined);
  page.workings(page.words("plan-heading-set"), plan.rings.set);
}

function place(page: PlanPage, { joint, depth }: SetRow): string {
  if (joint !== undefined && depth !== undefined) return page.words("plan-part-place", { joint, depth });
  if (depth !== undefined) return page.words("plan-part-depth", { depth });
  return joint === undefined ? "" : page.words("plan-part-joint", { joint });
}

/** What to cut, on what, and how much coil it takes. */
export function cutText(page: PlanPage, { rings, box }: Plan): void {
  const cut = answerOf(rings.cut);
  if (!cut) return;
  page.heading("plan-heading-cut");
  const count = answerOf(rings.set)?.rings.length;
  const skive = cut.cutLength > cut.length.mean;
  if (count !== undefined && box.stock !== undefined) {
    page.line(
      page.words(skive ? "plan-cut-count-skive" : "plan-cut-count", {
        count,
        size: page.length(box.stock),
        mandrel: page.length(cut.mandrel),
      }),
    );
  }
  const whole = (metric: Length, inch: Length) => (page.system === "metric" ? page.value("length", metric, { decimals: 0 }) : inches(inch));
  page.row(page.words("plan-cut-length"), whole(cut.lengthRounded, cut.lengthRoundedInch));
  if (skive) {
    page.row(page.words("plan-cut-tip"), whole(cut.cutLengthRounded, cut.cutLengthRoundedInch));
    page.row(
      page.words("plan-cut-angle"),
      page.value("angle", cut.angle, { decimals: 0 }),
      page.words("plan-cut-angle-note", {
        strip: page.value("angle", cut.angle, { decimals: 0 }),
        square: page.value("angle", cut.angleFromSquare, { decimals: 0 }),
      }),
    );
  }
  const gap = cut.gap.gap;
  page.row(
    page.words("plan-gap-policy"),
    "",
    gap && gap.high > 0
      ? page.words("plan-cut-gap", { low: page.length(gap.low), high: page.length(gap.high) })
      : page.words("plan-cut-gap-none"),
  );
  page.row(page.words("plan-cut-shortcut"), page.value("length", cut.shortcutError, { decimals: page.system === "metric" ? 0 : 2 }));
  const coil = answerOf(rings.coil);
  if (coil)
    page.row(
      page.words("plan-coil"),
      formatQuantity("length", coil.length, {
        unit: page.system === "metric" ? "m" : "in",
        decimals: page.system === "metric" ? 2 : 1,
      }),
    );
  page.workings(page.words("plan-heading-cut"), rings.cut, rings.coil);
}

/** Inches to the sixteenth, as a rule shows them. */
function inches(length: Length): string {
  const sixteenths = Math.round(
    Number(formatQuantity("length", length, { unit: "in", decimals: 6 }).split("\u00a0")[0]?.replaceAll("\u2009", "")) * 16,
  );
  const whole = Math.floor(sixteenths / 16);
  let [num, den] = [sixteenths % 16, 16];
  while (num > 0 && num % 2 === 0) [num, den] = [num / 2, den / 2];
  return `${num === 0 ? whole : whole === 0 ? `${num}/${den}` : `${whole} ${num}/${den}`}\u00a0in`;
}

/** Where the lantern ring sits, and when the port closes. */
export function lanternText(page: PlanPage, plan: Plan): void {
  const lantern = setOf(plan)?.lantern;
  if (!lantern) return;
  page.heading("plan-heading-lantern");
  page.row(page.words("plan-lantern-after"), String(lantern.afterRing));
  const limit = lantern.limit;
  const { port = {} } = plan.survey;
  const depth = answerOf(plan.box.depth)?.mean.mean;
  const portAt = port.fromThroat ?? (port.fromFace === undefined || depth === undefined ? undefined : ((depth - port.fromFace) as Length));
  if (portAt !== undefined) {
    const off = lantern.centre - portAt;
    page.row(
      page.words("plan-lantern-offset"),
      page.length(Math.abs(off) as Length),
      page.words(off >= 0 ? "plan-to-gland" : "plan-to-throat"),
    );
  }
  if (!limit) return;
  if (limit.gap)
    page.row(page.words("plan-lantern-closes"), page.band("length", limit.gap, { decimals: page.system === "metric" ? 0 : 2 }));
  if (limit.shutGap)
    page.row(page.words("plan-lantern-shut"), page.band("length", limit.shutGap, { decimals: page.system === "metric" ? 0 : 2 }));
  if (!limit.limits) page.line(page.words("plan-lantern-stays"));
  else if (limit.repackGap !== undefined) {
    const size = formatQuantity("length", limit.repackGap, { unit: "mm", decimals: 0 });
    page.mark(
      limit.closedBy === undefined
        ? page.words("plan-lantern-go-no-ring", { size })
        : page.words("plan-lantern-go", { size, ring: limit.closedBy }),
    );
  }
  page.workings(page.words("plan-heading-lantern"), plan.rings.track);
}
