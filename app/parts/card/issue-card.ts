import { drawCard } from "@ringwright/card";
import type { Plan } from "@ringwright/core/plan";
import type { Found } from "@ringwright/core/workings";
import { uuidv7 } from "@ringwright/logbook";
import Document from "pdfkit";
import { randomBytes } from "../../device/chance.ts";
import { now, rfc3339 } from "../../device/clock.ts";
import { version } from "../../device/version.ts";
import type { Workshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { cardFonts } from "./fonts.ts";
import { figuresOf, fileName } from "./issued-figures.ts";

/** Draws the card of a box on this device, writes down that it was issued, and gives where it can be opened. */
export async function issueCard(box: Box, { kept, preferences }: Workshop): Promise<{ readonly address: string; readonly file: string }> {
  const { planned } = box;
  if (planned.kind !== "planned" || !planned.answer.ok) throw new Error("there is no plan to draw");
  const plan: Found<Plan> = planned.answer;
  const paper = preferences.paper.peek();
  const system = preferences.units.peek();
  const ms = now();
  const bytes = await drawCard(plan, {
    Document,
    fonts: await cardFonts(),
    system,
    paper,
    issued: { when: rfc3339(ms), version, boxLink: `${location.origin}/box/${box.id}` },
  });
  const figures = figuresOf(plan, system, version);
  await kept.write(
    "card-issued",
    box.id,
    { card: uuidv7(ms, randomBytes(10)), paper, survey: box.question, figures },
    { method: `plan ${version}` },
  );
  const pdf = new Blob([new Uint8Array(bytes)], { type: "application/pdf" });
  return { address: URL.createObjectURL(pdf), file: fileName(box.name, rfc3339(ms)) };
}
