import type { Facts } from "@ringwright/answers";
import type { Diary } from "./act.ts";

/** What happened at one box up to now. */
export type Story = (facts: Facts) => Diary;
