import type { AnyAnswer } from "./answer.ts";
import { cautionsAnswers } from "./topics/cautions.ts";
import { conditionAnswers } from "./topics/condition.ts";
import { fitAnswers } from "./topics/fit.ts";
import { fluidAnswers } from "./topics/fluid.ts";
import { flushAnswers } from "./topics/flush.ts";
import { glandAnswers } from "./topics/gland.ts";
import { heatAnswers } from "./topics/heat.ts";
import { lanternAnswers } from "./topics/lantern.ts";
import { leakAnswers } from "./topics/leak.ts";
import { materialsAnswers } from "./topics/materials.ts";
import { measuredAnswers } from "./topics/measured.ts";
import { planAnswers } from "./topics/plan.ts";
import { ringsAnswers } from "./topics/rings.ts";
import { runInAnswers } from "./topics/run-in.ts";
import { sectionAnswers } from "./topics/section.ts";
import { stemsAnswers } from "./topics/stems.ts";
import { unitsAnswers } from "./topics/units.ts";

/** Every answer, in the order of the work. */
export const answers: readonly AnyAnswer[] = [
  ...unitsAnswers,
  ...measuredAnswers,
  ...conditionAnswers,
  ...sectionAnswers,
  ...ringsAnswers,
  ...lanternAnswers,
  ...glandAnswers,
  ...stemsAnswers,
  ...flushAnswers,
  ...leakAnswers,
  ...heatAnswers,
  ...fluidAnswers,
  ...materialsAnswers,
  ...fitAnswers,
  ...runInAnswers,
  ...cautionsAnswers,
  ...planAnswers,
];
