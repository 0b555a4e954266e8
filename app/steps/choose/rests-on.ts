import { isStem, turns } from "@ringwright/core/box";
import type { Unsaid } from "@ringwright/core/materials";
import type { Plan } from "@ringwright/core/plan";
import { type BoxState, type FieldValue, standing } from "@ringwright/logbook";
import { fieldName, fieldValue } from "../../parts/field-value.ts";
import type { Words } from "../../parts/words.ts";

/** One thing that the choice of a packing rests on. */
export interface RestsOn {
  /** Of the survey: where it is asked. */
  readonly field: string;
  readonly label: string;
  /** As it was typed; nothing where it was not said. */
  readonly value?: string;
  /** Worked out from other answers, for which it is no answer of its own. */
  readonly worked?: true;
  /** What was not compared for lack of it. */
  readonly without?: string;
}

/** What would be compared if it were known, by the field that would say it. */
const without: Readonly<Record<string, string>> = {
  "service.fluids": "material-without-fluids",
  "service.temperature": "material-without-temperature",
  "service.pressure": "material-without-pressure",
  "service.rotation": "material-without-speed",
  "service.pH": "material-without-ph",
  "service.solids": "choose-without-solids",
  "service.phase": "choose-without-phase",
  "service.sleeve": "choose-without-sleeve-material",
  "condition.hardness": "material-without-sleeve",
  "condition.throatClearance": "choose-without-throat",
  "service.use": "choose-without-use",
  release: "material-without-release",
};

/** Where each thing is asked that a packing may be waiting for. */
export const askedAt: Readonly<Record<Unsaid, string>> = {
  fluids: "service.fluids",
  sleeve: "service.sleeve",
  hardness: "condition.hardness",
};

/** Fields that matter only while the comparison says that it lacked them. */
const onlyIfLacking: ReadonlySet<string> = new Set(["service.pH", "condition.hardness"]);

/** What the choice rests on, in the order of asking; what was not said tells what it would settle. */
export function restsOn(state: BoxState, plan: Plan | undefined, words: Words): readonly RestsOn[] {
  const motion = plan?.survey.motion;
  const lacking = new Set(plan?.chosen.materials.ok ? plan.chosen.materials.warnings.map(({ says }) => says.id) : []);
  const isAsked = (field: string, id: string, said: boolean) => {
    if (field === "service.rotation") return motion !== undefined && turns(motion);
    if (field === "release") return motion === undefined || !isStem(motion);
    return said || !onlyIfLacking.has(field) || lacking.has(id);
  };
  return Object.entries(without).flatMap(([field, id]): readonly RestsOn[] => {
    const label = fieldName(field, words);
    const said = standing<FieldValue>(state.fields.get(field));
    const isKnown = said !== undefined && said !== null && said !== "unknown";
    if (!isAsked(field, id, isKnown)) return [];
    if (isKnown) return [{ field, label, value: fieldValue(field, said, words) }];
    const worked = workedOut(field, plan, words);
    if (worked !== undefined) return [{ field, label, value: worked, worked: true }];
    return [{ field, label, without: words(id), ...(said === undefined ? {} : { value: words("choose-dont-know") }) }];
  });
}

/** The pressure in the box may follow from suction and discharge. */
function workedOut(field: string, plan: Plan | undefined, words: Words): string | undefined {
  const pressure = field === "service.pressure" ? plan?.pressures.atSet : undefined;
  return pressure === undefined ? undefined : words.value("pressure", pressure, { digits: 2 });
}
