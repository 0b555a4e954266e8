import { surveyWith } from "@ringwright/logbook";
import { useEffect, useState } from "preact/hooks";
import { facts } from "../../facts/facts.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import { type Box, type Planned, planned } from "../../kept/box.ts";
import { readAnswer } from "./answer.ts";
import { draftKey, readDraft } from "./draft.ts";
import type { Known } from "./question.ts";
import { questionsFor } from "./questions.ts";

/** The box as it would be with everything that is being typed. */
export interface Live {
  readonly question: Known;
  readonly planned: Planned;
  /** When working it out began, by the page's own clock. */
  readonly since: number;
}

/** What is known of a box, with the drafts that can be read laid over it. */
export function overlaid(question: Known, drafts: ReadonlyMap<string, string>): Known {
  if (drafts.size === 0) return question;
  let over = question;
  for (const asked of questionsFor(question)) {
    const draft = readDraft(drafts.get(asked.field));
    if (draft === undefined) continue;
    const read = readAnswer(asked, draft);
    if (read.kind === "value") over = surveyWith(over, asked.field, read.value);
  }
  return over;
}

/** The box with its drafts, worked out again at most once a frame while someone types. */
export function useLive(box: Box): Live {
  const { drafts } = useWorkshop();
  const typed = drafts.under(draftKey(box.id, ""));
  const changes = drafts.changes.value;
  const { all } = facts.value;
  const [live, setLive] = useState<Live>(() => liveOf(box, typed));
  useEffect(() => {
    const frame = requestAnimationFrame(() => setLive(liveOf(box, typed)));
    return () => cancelAnimationFrame(frame);
  }, [box, changes, all]);
  return live;
}

function liveOf(box: Box, typed: ReadonlyMap<string, string>): Live {
  const since = performance.now();
  const question = overlaid(box.question, typed);
  return { question, planned: question === box.question ? box.planned : planned(question), since };
}
