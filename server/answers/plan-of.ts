import { type Facts, type Json, type Reply, replyOf, work } from "@ringwright/answers";
import type { Plan } from "@ringwright/core/plan";
import type { Found } from "@ringwright/core/workings";
import { type Problem, problemOfRefusal } from "../problems/problem.ts";

/** The plan of a survey, for what is drawn or printed from it; or what is wrong with the survey. */
export function planOf(survey: Json, facts: Facts): Found<Plan> | { readonly problem: Problem } {
  const worked = work("plan", survey, facts);
  if ("malformed" in worked) return refused(worked.malformed);
  if (!worked.found.ok) return refused(replyOf(worked));
  return { ...worked.found, value: worked.found.value as Plan };
}

function refused(reply: Reply): { readonly problem: Problem } {
  if (reply.ok) throw new Error("a refusal was answered");
  return { problem: problemOfRefusal(reply.refusal) };
}
