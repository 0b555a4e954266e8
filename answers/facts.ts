/**
 * Facts from data/, read at the edge and handed in with every question. Each
 * member has the shape that its topic in core declares.
 */
export type Facts = Readonly<Record<never, never>>;
