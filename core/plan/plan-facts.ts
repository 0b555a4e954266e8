import type { CautionFacts } from "../cautions/index.ts";
import type { ConditionFacts } from "../condition/index.ts";
import type { FitFacts } from "../fit/index.ts";
import type { FlushFacts } from "../flush/index.ts";
import type { GlandFacts } from "../gland/index.ts";
import type { HeatFacts } from "../heat/index.ts";
import type { DripFacts } from "../leak/index.ts";
import type { MaterialsFacts } from "../materials/index.ts";
import type { RingFacts } from "../rings/index.ts";
import type { RunInFacts } from "../run-in/index.ts";
import type { SectionFacts } from "../section/index.ts";
import type { StemFacts } from "../stems/index.ts";
import type { UncertaintyFacts } from "../uncertainty/index.ts";

/** The facts that a whole plan rests on. */
export interface PlanFacts {
  readonly uncertainty: UncertaintyFacts;
  readonly section: SectionFacts;
  readonly condition: ConditionFacts;
  readonly rings: RingFacts;
  readonly gland: GlandFacts;
  readonly stems: StemFacts;
  readonly flush: FlushFacts;
  readonly heat: HeatFacts;
  readonly leak: { readonly drip: DripFacts };
  readonly materials: MaterialsFacts;
  readonly cautions: CautionFacts;
  readonly fit: FitFacts;
  readonly runIn: RunInFacts;
}
