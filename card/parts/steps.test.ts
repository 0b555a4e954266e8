import type { Point } from "@ringwright/drawings";
import { planInWords, type StepText } from "@ringwright/words/plan";
import { expect, test } from "vitest";
import { PdfCanvas } from "../pdf/canvas.ts";
import { Typesetter } from "../pdf/typesetter.ts";
import { area, type Setting } from "../setting.ts";
import { emptyDocument } from "../testing/empty-document.ts";
import { example, fonts, longBox, planOf, stem } from "../testing/issue.ts";
import { stepBlock } from "./steps.ts";

/** A canvas that notes the lines to write on and the rounds to mark. */
class Noting extends PdfCanvas {
  writing: Point[][] = [];
  rounds = 0;
  boxes = 0;

  override rule(from: Point, to: Point, width?: number, colour?: string): void {
    if (width === 0.2) this.writing.push([from, to]);
    super.rule(from, to, width, colour);
  }

  override circle(...round: Parameters<PdfCanvas["circle"]>): void {
    this.rounds++;
    super.circle(...round);
  }

  override frame(...box: Parameters<PdfCanvas["frame"]>): void {
    this.boxes++;
    super.frame(...box);
  }
}

const doc = emptyDocument();
const type = new Typesetter(doc, fonts);
const setting: Setting = { type, system: "metric", words: (id) => id };

function painted(step: StepText): { readonly canvas: Noting; readonly height: number } {
  const canvas = new Noting(doc, type);
  const block = stepBlock(setting, step, area.width);
  block.paint(canvas, 0, 0);
  return { canvas, height: block.height };
}

test("every step has a box to tick, a line for each thing to write, and a round for each choice, all inside its own block", () => {
  const steps = [example, longBox, stem].flatMap((survey) => planInWords(planOf(survey), "metric").groups.flatMap((group) => group.steps));
  expect(steps.filter(({ asksNumber }) => asksNumber).length).toBeGreaterThan(30);
  for (const step of steps) {
    const { canvas, height } = painted(step);
    expect(canvas.boxes, step.id).toBe(1);
    expect(canvas.writing.length, step.id).toBe(step.blanks.length + (step.asksNumber ? 1 : 0));
    expect(canvas.rounds, step.id).toBe(step.choices.length);
    for (const [from, to] of canvas.writing as [Point, Point][]) {
      expect(to[0] - from[0], step.id).toBeGreaterThan(15);
      expect(to[0]).toBeLessThanOrEqual(area.width);
      expect(from[1]).toBeLessThan(height);
    }
  }
});
