import type { BoxPressureFacts } from "@ringwright/core/flush";
import type { ExpansionTable } from "@ringwright/core/heat";

/**
 * Facts from data/, read at the edge and handed in with every question. Each
 * member has the shape that its topic in core declares.
 */
export interface Facts {
  readonly flush: { readonly boxPressure: BoxPressureFacts };
  readonly heat: { readonly ptfeExpansion: ExpansionTable };
}
