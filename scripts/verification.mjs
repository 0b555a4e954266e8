// Turns what the tests just compared into the pages of docs/verification/.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./prepare.mjs";

const folder = join(root, "docs", "verification");
const seenAs = {
  read: "page read",
  quoted: "read in a quotation or excerpt",
  memory: "from memory",
  derived: "derived independently",
  practice: "common practice",
};

const shown = (value) => (Number.isInteger(value) && Math.abs(value) < 1e15 ? String(value) : String(Number(value.toPrecision(9))));
const cell = (text) => String(text).replaceAll("|", "\\|");
const by = (key) => (a, b) => (a[key] < b[key] ? -1 : a[key] > b[key] ? 1 : 0);

function group(rows, key) {
  const groups = new Map();
  for (const row of rows) groups.set(row[key], [...(groups.get(row[key]) ?? []), row]);
  return groups;
}

function difference({ ours, theirs }) {
  const off = ours - theirs;
  if (off === 0) return "0";
  // Below this the last digits of a double are printed, and they may differ from one processor to the next.
  if (theirs !== 0 && Math.abs(off / theirs) < 1e-10) return "under 1e-8 %";
  return theirs === 0 ? off.toExponential(1) : `${((off / Math.abs(theirs)) * 100).toPrecision(2)} %`;
}

function page(topic, rows) {
  const parts = [`# ${topic[0].toUpperCase()}${topic.slice(1)}: checked against the outside\n`];
  for (const [check, of] of [...group(rows, "check")].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const [first] = of;
    parts.push(`## ${check}\n\nSource: ${first.place} (${seenAs[first.seen]}).\nTolerance: ${first.tolerance}.\n`);
    parts.push("| case | theirs | ours | unit | difference |\n|---|---|---|---|---|");
    for (const row of of)
      parts.push(`| ${cell(row.what)} | ${shown(row.theirs)} | ${shown(row.ours)} | ${cell(row.unit)} | ${difference(row)} |`);
    parts.push("");
  }
  return `${parts.join("\n").trimEnd()}\n`;
}

/** The pages, by file name, from what the tests wrote down. */
export function pagesFrom(file) {
  const rows = readFileSync(file, "utf8")
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line));
  const pages = new Map();
  const index = [
    "# What was checked against what\n",
    "Written by the tests: each row was compared in the run that wrote it.\n",
    "| topic | checks | rows |\n|---|---|---|",
  ];
  for (const [topic, of] of [...group(rows.sort(by("what")), "topic")].sort(([a], [b]) => (a < b ? -1 : 1))) {
    pages.set(`${topic}.md`, page(topic, of));
    index.push(`| [${topic}](${topic}.md) | ${group(of, "check").size} | ${of.length} |`);
  }
  pages.set("README.md", `${index.join("\n")}\n`);
  return pages;
}

/** Names of pages that differ from what the tests found. */
export function stalePages(pages) {
  const there = existsSync(folder) ? readdirSync(folder) : [];
  const read = (name) => (there.includes(name) ? readFileSync(join(folder, name), "utf8") : undefined);
  return [...new Set([...pages.keys(), ...there])].filter((name) => pages.get(name) !== read(name));
}

export function writePages(pages) {
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder)) if (!pages.has(name)) rmSync(join(folder, name));
  for (const [name, text] of pages) writeFileSync(join(folder, name), text);
}
