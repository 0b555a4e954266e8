import { english, learn } from "./first.ts";
import { rest } from "./rest.ts";

// Where nobody waits for a page, all words are there from the start.
learn(rest);

export { english };
