import type { CautionFacts } from "@ringwright/core/cautions";
import type { ConditionFacts } from "@ringwright/core/condition";
import type { FitFacts } from "@ringwright/core/fit";
import type { FlushFacts } from "@ringwright/core/flush";
import type { GlandFacts } from "@ringwright/core/gland";
import type { HeatFacts } from "@ringwright/core/heat";
import type { DripFacts } from "@ringwright/core/leak";
import type { MaterialsFacts } from "@ringwright/core/materials";
import type { RingFacts } from "@ringwright/core/rings";
import type { RodFacts } from "@ringwright/core/rods";
import type { RunInFacts } from "@ringwright/core/run-in";
import type { SectionFacts } from "@ringwright/core/section";
import type { StemFacts } from "@ringwright/core/stems";
import type { UncertaintyFacts } from "@ringwright/core/uncertainty";

/**
 * Facts from data/, read at the edge and handed in with every question. Each
 * member has the shape that its topic in core declares.
 */
export interface Facts {
  readonly flush: FlushFacts;
  readonly gland: GlandFacts;
  readonly leak: { readonly drip: DripFacts };
  readonly heat: HeatFacts;
  readonly uncertainty: UncertaintyFacts;
  readonly section: SectionFacts;
  readonly rods: RodFacts;
  readonly stems: StemFacts;
  readonly rings: RingFacts;
  readonly cautions: CautionFacts;
  readonly fit: FitFacts;
  readonly runIn: RunInFacts;
  readonly condition: ConditionFacts;
  readonly materials: MaterialsFacts;
}
