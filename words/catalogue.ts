/** All words of one language. `{name}` in a sentence stands for a value given with it. */
export interface Catalogue {
  readonly language: string;
  /** Whole sentences, by id. */
  readonly sentences: Readonly<Record<string, string>>;
  /** What things are called, by id, where the id is not itself the word. */
  readonly names: Readonly<Record<string, string>>;
}
