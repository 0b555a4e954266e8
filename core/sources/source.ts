/**
 * How the project knows a source: the page itself was read; a quotation,
 * excerpt or copy of it elsewhere; only memory; derived here from a stated
 * formula; or held in the trade with no document to cite.
 */
export type Seen = "read" | "quoted" | "memory" | "derived" | "practice";

/** One book, standard, paper or sheet that a value can rest on. Each stands once in the project. */
export interface Source {
  /** As a reader would look it up: author or body, title, edition, publisher, year. Makers' sheets are anonymous. */
  readonly title: string;
  readonly seen: Seen;
  /** What of it was seen, in a few words ("Table 25.2 and text"), or why it was not. */
  readonly what: string;
}
