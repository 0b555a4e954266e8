import { parseArgs } from "node:util";
import { isMalformed, type Reply, refusedQuestion, replyOf, work } from "@ringwright/answers";
import type { Plan } from "@ringwright/core/plan";
import { readAllFacts } from "@ringwright/data";
import { say } from "@ringwright/words";
import { readBoxFile } from "./box-file.ts";
import { exits } from "./exits.ts";
import { planText } from "./plan/plan-text.ts";
import { type CardAsked, writeCard } from "./plan-card.ts";
import { type DrawingFiles, writeDrawings } from "./plan-drawings.ts";
import { refusalText } from "./refusal-text.ts";
import type { Streams } from "./streams.ts";

const options = {
  workings: { type: "boolean" },
  json: { type: "boolean" },
  units: { type: "string" },
  drawing: { type: "string" },
  clock: { type: "string" },
  strip: { type: "string" },
  push: { type: "string" },
  card: { type: "string" },
  paper: { type: "string" },
} as const;

/** `ringwright plan FILE`: the whole plan for a box. */
export async function planCommand(words: readonly string[], streams: Streams): Promise<number> {
  const asked = readWords(words);
  if (typeof asked === "string") {
    streams.err(`${asked}\n\n${say({ id: "command-usage" })}\n`);
    return exits.malformed;
  }
  const file = await readBoxFile(asked.file, streams);
  if (!file.ok) return refuse(refusedQuestion(file.malformed).refusal, asked, streams);
  const worked = work("plan", file.value, readAllFacts());
  const reply = "malformed" in worked ? worked.malformed : undefined;
  if (reply && !reply.ok) return refuse(reply.refusal, asked, streams);
  if ("malformed" in worked) return exits.malformed;
  if (!worked.found.ok) {
    const refused = replyOf(worked);
    return refused.ok ? exits.ok : refuse(refused.refusal, asked, streams);
  }
  const found = { ...worked.found, value: worked.found.value as Plan };
  if (asked.json) streams.out(`${JSON.stringify(replyOf(worked))}\n`);
  else streams.out(planText(found, { system: asked.units, workings: asked.workings }));
  const drawn = [
    ...(await writeDrawings(found.value, asked.drawings, asked.units, streams)),
    ...(asked.card ? [await writeCard(found, asked.card, asked.units, streams)] : []),
  ];
  for (const { line } of drawn) streams.err(`${line}\n`);
  return drawn.some(({ failed }) => failed) ? exits.malformed : exits.ok;
}

interface Asked {
  readonly file: string;
  readonly json: boolean;
  readonly workings: boolean;
  readonly units: "metric" | "inch";
  readonly drawings: DrawingFiles;
  readonly card: CardAsked | undefined;
}

function readWords(words: readonly string[]): Asked | string {
  try {
    const { values, positionals } = parseArgs({ args: [...words], options, allowPositionals: true, strict: true });
    const { units = "metric", json = false, workings = false, card, paper = "a4", ...drawings } = values;
    if (positionals.length !== 1) return say({ id: "command-one-file" });
    if (units !== "metric" && units !== "inch") return say({ id: "command-units", with: { given: units } });
    if (paper !== "a4" && paper !== "letter") return say({ id: "command-paper", with: { given: paper } });
    return {
      file: positionals[0] ?? "-",
      json,
      workings,
      units,
      drawings,
      card: card === undefined ? undefined : { file: card, paper },
    };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

type Refusal = Extract<Reply, { ok: false }>["refusal"];

/** A refusal: as data on standard output, or as a sentence on standard error. */
function refuse(refusal: Refusal, { json, units: system }: Asked, streams: Streams): number {
  if (json) streams.out(`${JSON.stringify({ ok: false, refusal })}\n`);
  else streams.err(`${refusalText(refusal, system)}\n`);
  return isMalformed(refusal) ? exits.malformed : exits.refused;
}
