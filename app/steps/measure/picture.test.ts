import { isStem, motions } from "@ringwright/core/box";
import { expect, test } from "vitest";
import { planned } from "../../kept/box.ts";
import { cautionsAbove } from "./cautions.tsx";
import type { Live } from "./live.ts";
import { markedPart, ownDrawing, pointing, typicalDrawing } from "./picture.ts";
import type { Known, Question } from "./question.ts";
import { questionsFor } from "./questions.ts";

const live = (question: Known): Live => ({ question, planned: planned(question), since: 0 });
const of = (mm: number) => ({ readings: [{ value: mm / 1000, unit: "m" }] });

function asked(known: Known, field: string): Question {
  const found = questionsFor(known).find((question) => question.field === field);
  if (!found) throw new Error(`${field} is not asked`);
  return found;
}

test("whatever part a question points at is in the typical drawing, with a question mark where its dimension goes", () => {
  for (const motion of motions) {
    const known = { motion, lantern: { wanted: true, window: null }, port: { fromFace: null }, flush: { fitted: true } };
    for (const question of questionsFor(known)) {
      const drawing = typicalDrawing(live(known), question);
      // A stem's typical box has neither lantern ring nor port.
      const drawn = !isStem(motion) || (question.part !== "lantern" && question.part !== "port");
      if (question.part !== undefined && drawn) expect(markedPart(drawing, question), `${motion} ${question.id}`).toBeDefined();
      if (question.dimension !== undefined && drawn)
        expect(drawing.dimensions.filter(({ open }) => open).length, `${motion} ${question.id}`).toBe(1);
    }
  }
});

test("the typical box grows to the first size that is known, and states only that", () => {
  const known = { motion: "turning", shaft: of(120) };
  const drawing = typicalDrawing(live(known), asked(known, "bore"));
  expect(drawing.toScale).toBe(false);
  const figures = drawing.dimensions.map(({ id, states, open = false }) => [id, open ? "?" : Math.round(states * 1000)]);
  expect(figures).toEqual([
    ["bore", "?"],
    ["shaft", 120],
  ]);
});

test("the box itself is drawn as soon as shaft and bore are known, to scale", () => {
  expect(ownDrawing(live({ motion: "turning", shaft: of(50) }), "Box")).toBeUndefined();
  const drawing = ownDrawing(live({ motion: "turning", shaft: of(50), bore: of(75), depth: of(92) }), "Box");
  expect(drawing?.toScale).toBe(true);
  const states = (id: string) => drawing?.dimensions.find((one) => one.id === id)?.states;
  expect([states("shaft"), states("bore"), states("depth")].map((one) => Math.round((one ?? 0) * 1e5))).toEqual([5000, 7500, 9200]);
});

test("while a question is open, only what was measured is dimensioned, and what is asked", () => {
  const known = { motion: "turning", shaft: of(50), bore: of(75), depth: of(92) };
  const drawing = ownDrawing(live(known), "Box");
  if (!drawing) throw new Error("not drawn");
  expect(drawing.dimensions.some(({ ink }) => ink === "worked")).toBe(true);
  expect(pointing(drawing, asked(known, "depth")).dimensions.every(({ ink }) => ink === "measured")).toBe(true);
});

test("numbers that make no box draw nothing, and take no caution away", () => {
  const known = { motion: "turning", shaft: of(80), bore: of(75) };
  const fine = { motion: "turning", shaft: of(50), bore: of(75) };
  expect(ownDrawing(live(known), "Box")).toBeUndefined();
  const above = (one: Known) => cautionsAbove(asked(one, "shaft"), live(one));
  expect(above(fine)).toContain("caution-turning-shaft");
  expect(above(known)).toEqual(above(fine));
});

test("cautions stand above the inputs that they guard, and above no other", () => {
  const known = { motion: "turning" };
  const above = (field: string) => cautionsAbove(asked(known, field), live(known));
  expect(above("condition.runout")).toContain("caution-turning-shaft");
  expect(above("bore")).toContain("caution-stored-energy");
  expect(above("hazards.oldPacking")).toContain("caution-old-asbestos");
  expect(above("flush.fitted")).toContain("caution-trapped-flush");
  expect(above("studs.count")).toEqual([]);
});
