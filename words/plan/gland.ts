import { answerOf, type Plan } from "@ringwright/core/plan";
import type { PlanPage } from "./page.ts";

const percent = (share: number) => Math.round(100 * share);

/** How much of a push gets down to ring 1, and what a flat of the nuts does; a stem's load and torque. */
export function glandText(page: PlanPage, { load }: Plan): void {
  const standing = answerOf(load.standing);
  const nuts = answerOf(load.nuts);
  const stem = answerOf(load.stem);
  if (!standing && !nuts && !stem) return;
  page.heading(load.stem ? "plan-heading-stem" : "plan-heading-gland");
  if (standing?.share !== undefined) {
    page.row(page.words("plan-push"), `${percent(standing.share)} %`, page.words("plan-standing"));
    const turning = answerOf(load.turning)?.share;
    if (turning !== undefined) page.row(page.words("plan-push"), `${percent(turning)} %`, page.words("plan-turning"));
  }
  if (nuts) {
    page.row(
      page.words("plan-flat"),
      page.length(nuts.advancePerFlat, 2),
      nuts.sharePerFlat === undefined
        ? undefined
        : page.words("plan-flat-share", { percent: Number((100 * nuts.sharePerFlat).toPrecision(2)) }),
    );
    const stress = load.settings.ok ? page.value("stress", load.settings.value.glandStress, { digits: 2 }) : "";
    page.row(
      page.words("plan-finger-tight", { stress }),
      page.value("force", nuts.force, { digits: 2 }),
      page.words("plan-nut-small", { torque: page.value("torque", nuts.torque, { digits: 2 }) }),
    );
    if (nuts.pushOut > 0) page.row(page.words("plan-push-out"), page.value("force", nuts.pushOut, { digits: 2 }));
    const seal = answerOf(load.seal);
    if (seal)
      page.row(
        page.words("plan-seal"),
        page.band("stress", { low: seal.lower, high: seal.upper }, { digits: 2 }),
        page.words("plan-seal-note"),
      );
  }
  if (stem) {
    page.row(page.words("plan-stem-stress"), page.value("stress", stem.glandStress));
    page.row(
      page.words("plan-stem-torque"),
      page.value("torque", stem.torque, { digits: 2 }),
      page.words("plan-stem-torque-note", { band: page.band("force", stem.perNutBand, { digits: 2 }) }),
    );
    page.row(
      page.words("plan-stem-friction"),
      page.value("force", stem.stemFriction, { digits: 2 }),
      page.words("plan-stem-friction-note", { band: page.band("force", stem.frictionBand, { digits: 2 }) }),
    );
    page.row(page.words("plan-stem-out"), page.value("force", stem.rejectionLoad, { digits: 2 }));
    page.row(
      page.words("plan-stud-use"),
      `${percent(stem.studUse)} %`,
      page.words("plan-stud-use-high", { percent: percent(stem.studUseHigh) }),
    );
    page.row(page.words("plan-stem-left"), page.band("stress", stem.loadLeft, { digits: 2 }));
  }
  page.workings(page.words("plan-heading-gland"), load.settings, load.standing, load.turning, load.seal, load.nuts, load.stem);
}
