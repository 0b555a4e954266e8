import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { units, unitText } from "@ringwright/core/units";
import { english } from "@ringwright/words";
import * as fontkit from "fontkit";
import { expect, test } from "vitest";
import { emptyDocument } from "../testing/empty-document.ts";
import { fonts } from "../testing/issue.ts";
import { bare, readPdf } from "../testing/read-pdf.ts";
import { PdfCanvas } from "./canvas.ts";
import { bytesOf } from "./document.ts";
import { fontFiles } from "./fonts.ts";
import { Typesetter } from "./typesetter.ts";

/** Every character that core can hand out: in a formula, a unit, a source; and all that stands in words. */
function everyCharacter(): readonly string[] {
  const core = readdirSync(new URL("../../core/", import.meta.url), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".test.ts") && !path.startsWith("dist") && !path.includes("node_modules"))
    .map((path) => readFileSync(new URL(`../../core/${path}`, import.meta.url), "utf8"));
  const words = [...Object.values(english.sentences), ...Object.values(english.names)];
  const marks = "Øø⌀µ≤≥√′″☐■±−×·°²³½¼¾αβδεηθλμνπρστφωΔΣΩ АБВГДЕЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯабвгдежзийклмнопрстуфхцчшщъыьэюя";
  const all = [...core, ...words, ...[...units.keys()].map(unitText), marks].join("");
  // Wide digits are read where someone types them, and never written.
  return [...new Set(all)].filter((character) => !/[\p{Cc}０-９]/u.test(character)).sort();
}

const characters = everyCharacter();

test("the faces and their fallback have every character of words, units, formulas and sources", () => {
  const { resolve } = createRequire(import.meta.url);
  expect(characters.length).toBeGreaterThan(200);
  for (const [face, files] of Object.entries(fontFiles)) {
    const opened = files.map((file) => fontkit.create(readFileSync(resolve(file))));
    const lacking = characters.filter((character) => !opened.some((font) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)));
    expect(lacking, face).toEqual([]);
  }
});

test("drawn on a page, every character comes out as itself in every face", async () => {
  const doc = emptyDocument();
  const bytes = bytesOf(doc);
  const canvas = new PdfCanvas(doc, new Typesetter(doc, fonts));
  for (const [row, face, bold] of [
    [0, "words", false],
    [1, "words", true],
    [2, "numbers", false],
    [3, "numbers", true],
  ] as const) {
    for (let i = 0; i < characters.length; i += 40) {
      const text = characters.slice(i, i + 40).join("");
      canvas.text([{ text, face, bold }], [5, 8 + row * 65 + (i / 40) * 5], { size: 3, colour: "#000000" });
    }
  }
  doc.end();
  const [page] = (await readPdf(await bytes)).pages;
  const drawn = characters.filter((character) => bare(character) !== "");
  for (const character of drawn) expect(page?.text.split(character).length, character).toBeGreaterThan(4);
});

test("a character that no font has is shown as an empty square, never as nothing", () => {
  const doc = emptyDocument();
  const type = new Typesetter(doc, fonts);
  const pieces = type.pieces({ text: "a漢b\tc", face: "words", bold: false });
  expect(pieces.map(({ text }) => text).join("")).toBe("a□b c");
});
