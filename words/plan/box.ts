import { isStem } from "@ringwright/core/box";
import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Length } from "@ringwright/core/units";
import type { PlanPage } from "./page.ts";

type Dimension = Plan["box"]["shaft"];

/** Shaft, bore and depth as measured. */
export function boxText(page: PlanPage, { box, survey }: Plan): void {
  page.heading("plan-heading-box");
  const shaft = isStem(survey.motion) ? "plan-stem" : survey.motion === "stroking" ? "plan-rod" : "plan-shaft";
  for (const [id, part] of [
    [shaft, box.shaft],
    ["plan-bore", box.bore],
    ["plan-depth", box.depth],
  ] as const)
    dimension(page, id, part);
  const offset = answerOf(box.condition)?.offset;
  page.workings(page.words(shaft), box.shaft);
  page.workings(page.words("plan-bore"), box.bore);
  page.workings(page.words("plan-depth"), box.depth);
  if (offset?.direction !== undefined)
    page.line(
      page.words("plan-offset", {
        offset: page.uncertain(offset.offset),
        direction: Math.round(offset.direction) === 0 ? 12 : Math.round(offset.direction),
      }),
    );
}

function dimension(page: PlanPage, id: string, part: Dimension): void {
  const found = answerOf(part);
  if (!found) {
    page.row(page.words(id), page.words("plan-verdict-not-measured"), undefined, { blank: true });
    return;
  }
  const notes = [
    found.count > 1
      ? page.words("plan-readings", { count: found.count, spread: page.length(found.spread, 2) })
      : page.words("plan-one-reading"),
    ...(found.outOfRound === undefined ? [] : [page.words("plan-out-of-round", { value: page.length(found.outOfRound, 2) })]),
    ...(found.taper === undefined ? [] : [page.words("plan-taper", { value: page.length(found.taper, 2) })]),
  ];
  page.row(page.words(id), page.uncertain(found.mean), notes.join(", "), { by: "measured" });
}

/** Remarks after one another, each without its full stop but the last as it came. */
function joined(remarks: readonly string[]): string {
  return remarks.map((remark, index) => (index < remarks.length - 1 ? remark.replace(/\.$/u, "") : remark)).join("; ");
}

/** The verdicts on the condition of the box: what was found, what is said of it, how the limits split. */
export function conditionText(page: PlanPage, { box }: Plan): void {
  const found = answerOf(box.condition);
  if (!found) return;
  page.heading("plan-heading-condition");
  for (const verdict of found.verdicts) {
    const { measured, seen } = verdict;
    const shown =
      measured === undefined
        ? seen === undefined || seen === "yes" || seen === "no"
          ? ""
          : page.name(seen)
        : measured.unit === "m"
          ? page.length(measured.value as Length, 2)
          : String(Math.round(measured.value));
    const limits = verdict.limits.filter((limit) => !limit.beside);
    const passes = limits.filter((limit) => limit.outcome === "pass").length;
    const values = limits.map((limit) => limit.value);
    const word = page.words(`plan-verdict-${verdict.verdict}`);
    const note = joined([
      ...(limits.length > 1 && limits[0]?.unit === "m"
        ? [
            `${page.words("plan-limits-split", { passes, count: limits.length })}, ${page.words("plan-limits-spread", { low: page.length(Math.min(...values) as Length, 2), high: page.length(Math.max(...values) as Length, 2) })}`,
          ]
        : []),
      ...(verdict.houseLimit
        ? [
            page.words("plan-house-limit", {
              value: verdict.houseLimit.unit === "m" ? page.length(verdict.houseLimit.value as Length, 3) : verdict.houseLimit.value,
              by: verdict.houseLimit.setBy,
            }),
          ]
        : []),
      ...(verdict.verdict === "good" || verdict.verdict === "not-measured" ? [] : verdict.advice.map((id) => page.words(id))),
    ]);
    page.row(page.name(verdict.id), shown, word, {
      under: note,
      by: "measured",
      ...(verdict.verdict === "not-measured" ? { blank: true } : verdict.verdict === "good" ? {} : { asks: true }),
    });
  }
  page.workings(page.words("plan-heading-condition"), box.condition);
}

/** The gap to fill and the stock that fills it. */
export function sectionText(page: PlanPage, { box }: Plan): void {
  const found = answerOf(box.section);
  if (!found && box.stock === undefined) return;
  page.heading("plan-heading-section");
  if (found) {
    page.row(page.words("plan-gap"), page.uncertain(found.section, 1));
    for (const stock of found.stock) {
      const note = joined([
        page.words(stock.advice),
        page.words("plan-probability", { percent: Math.round(100 * stock.probability) }),
        ...(stock.size === box.stock ? [page.words("plan-taken")] : []),
      ]);
      page.row(page.words("plan-stock", { size: stock.label }), page.length(stock.size), note);
    }
    for (const id of found.advice) page.line(page.words(id));
  }
  page.workings(page.words("plan-heading-section"), box.section);
}
