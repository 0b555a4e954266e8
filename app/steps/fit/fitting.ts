import { type Bridge, bridge, type Step } from "@ringwright/core/fit";
import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Answer as CoreAnswer } from "@ringwright/core/workings";
import { type Job, uuidv7 } from "@ringwright/logbook";
import { PlanPage, type StepGroupText, type StepText, stepGroupsText, stopRulesText } from "@ringwright/words/plan";
import { useMemo } from "preact/hooks";
import { randomBytes } from "../../device/chance.ts";
import { now, rfc3339 } from "../../device/clock.ts";
import { version } from "../../device/version.ts";
import { facts } from "../../facts/facts.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { type Box, planOf } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { type Answer, expectedOf } from "./answer.ts";
import { jobUnderWay } from "./job.ts";

/** The steps of a box, as the plan has them and in words. */
export interface StepsOfBox {
  /** From kit to start. */
  readonly steps: readonly Step[];
  readonly groups: readonly StepGroupText[];
  /** By id. */
  readonly texts: ReadonlyMap<string, StepText>;
  /** Groups after the start: running in and looking again. */
  readonly runIn: readonly StepGroupText[];
  readonly stopRules: readonly string[];
}

const afterStart: ReadonlySet<string> = new Set(["run", "settle", "check"]);

export function useSteps(box: Box): StepsOfBox | undefined {
  const { preferences } = useWorkshop();
  const plan: Plan | undefined = planOf(box);
  const system = preferences.units.value;
  return useMemo(() => {
    const steps = answerOf(plan?.steps.fit)?.steps;
    if (!plan || !steps || steps.length === 0) return undefined;
    const page = new PlanPage(system);
    const all = stepGroupsText(page, plan);
    return {
      steps,
      groups: all.filter(({ id }) => !afterStart.has(id)),
      texts: new Map(all.flatMap((group) => group.steps.map((step) => [step.id, step]))),
      runIn: all.filter(({ id }) => afterStart.has(id)),
      stopRules: stopRulesText(page, plan),
    };
  }, [plan, system]);
}

/** A job of a box as this device sees it, and what can be written into it. */
export interface Fitting {
  /** What was written down so far; none before the first step. */
  readonly job: Job | undefined;
  /** The job that the machine runs on, while no new one was begun. */
  readonly finished: Job | undefined;
  /** Before every key of a draft of this job. */
  readonly prefix: string;
  /** Paper time: when what is entered now was done. */
  readonly paper: string | undefined;
  keep(step: Step, answer: Answer & { readonly kind: "ready" }): Promise<void>;
  keepNotDone(step: Step, reason: string, answer?: Answer & { readonly kind: "ready" }): Promise<void>;
  keepBridge(step: Step, made: Bridge): Promise<void>;
  keepStarted(): Promise<void>;
  note(text: string): Promise<void>;
  beginAnew(): Promise<void>;
}

export function useFitting({ id: box, state }: Box): Fitting {
  const { kept, drafts } = useWorkshop();
  const words = useWords();
  const prefix = `box/${box}/fit/`;
  const drafted = drafts.text(`${prefix}job`);
  const begun = drafted === undefined ? jobUnderWay(state) : state.jobs.find(({ id }) => id === drafted);
  const job = begun?.started === undefined ? begun : undefined;
  const last = state.jobs.at(-1);
  const finished = job === undefined && (drafted === undefined || drafted === last?.id) && last?.started ? last : undefined;
  const paper = drafts.text(`${prefix}paper`);
  const happened = paper === undefined || paper === "" ? undefined : new Date(paper).getTime();
  const beside = Number.isFinite(happened) ? { happened } : {};
  // The id of a new job is on disk before its first entry: two taps, or a killed page, make one job.
  const jobId = async () => {
    if (job) return job.id;
    const waiting = drafts.text(`${prefix}job`);
    if (waiting !== undefined && !state.jobs.some(({ id, started }) => id === waiting && started)) return waiting;
    const fresh = uuidv7(now(), randomBytes(10));
    await drafts.put(`${prefix}job`, fresh);
    return fresh;
  };
  const written = async (step: Step, body: object, method?: string) => {
    const entry = { job: await jobId(), step: step.id, found: null, ...body };
    await kept.write("fit-step", box, entry, { ...beside, method });
    for (const key of drafts.under(`${prefix}${step.id}/`).keys()) await drafts.drop(`${prefix}${step.id}/${key}`);
  };
  const said = (step: Step, { found, blanks }: Answer & { readonly kind: "ready" }) => {
    const expected = expectedOf(step, words);
    return {
      found,
      ...(expected === undefined ? {} : { expected }),
      ...(Object.keys(blanks).length === 0 ? {} : { blanks }),
    };
  };
  const methodOf = (step: Step) => (step.predicted === undefined ? undefined : `fit-steps ${version}`);
  return {
    job,
    finished,
    prefix,
    paper,
    keep: (step, answer) => written(step, said(step, answer), methodOf(step)),
    keepNotDone: (step, reason, answer) =>
      written(step, { ...(answer ? said(step, answer) : {}), cannot: reason }, answer && methodOf(step)),
    keepBridge: async (step, { reason, owner, until }) => {
      await kept.write("bridge", box, { job: await jobId(), step: step.id, why: words.called(reason), owner, until }, beside);
    },
    keepStarted: async () => {
      await kept.write("started", box, { job: await jobId() }, beside);
      await drafts.drop(`${prefix}job`);
      await drafts.drop(`${prefix}left`);
    },
    note: async (text) => {
      await kept.write("note", box, { text }, beside);
    },
    beginAnew: async () => {
      await drafts.put(`${prefix}job`, uuidv7(now(), randomBytes(10)));
      await drafts.drop(`${prefix}left`);
    },
  };
}

/** A make-do for a step, or why it is none yet. */
export function bridgeFor(
  step: Step,
  given: { readonly reason: string; readonly owner: string; readonly until: string; readonly ringsLeftIn: number },
): CoreAnswer<Bridge> {
  return bridge({ step: step.id, today: today(), ...given }, facts.peek().all.fit);
}

/** A day of this device's calendar, so many days from now. */
export function today(daysFromNow = 0): string {
  return rfc3339(now() + daysFromNow * 86_400_000).slice(0, 10);
}
