import type { BoxPressureFacts } from "@ringwright/core/flush";
import type { ExpansionTable } from "@ringwright/core/heat";
import type { SectionFacts } from "@ringwright/core/section";
import type { UncertaintyFacts } from "@ringwright/core/uncertainty";

/**
 * Facts from data/, read at the edge and handed in with every question. Each
 * member has the shape that its topic in core declares.
 */
export interface Facts {
  readonly flush: { readonly boxPressure: BoxPressureFacts };
  readonly heat: { readonly ptfeExpansion: ExpansionTable };
  readonly uncertainty: UncertaintyFacts;
  readonly section: SectionFacts;
}
