import { english as first } from "@ringwright/words/learn";
import { rest } from "@ringwright/words/rest";
import { expect, test } from "vitest";
import { questions } from "./questions.ts";

test("every option of every question is called by the words that a device begins with", () => {
  const options = questions.flatMap(({ asks }) => ("options" in asks ? asks.options : "hows" in asks ? asks.hows : []));
  const named = [...questions.map(({ field }) => field.split(".").at(-1) ?? ""), ...options];
  expect(options.length).toBeGreaterThan(50);
  const late = named.filter((id) => Object.hasOwn(rest.names, id) && !Object.hasOwn(first.names, id));
  const lateSentences = questions
    .flatMap(({ id }) => [`ask-${id}`, `why-${id}`, `how-${id}`])
    .filter((id) => !Object.hasOwn(first.sentences, id));
  expect([late, lateSentences]).toEqual([[], []]);
});
