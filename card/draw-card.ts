import type { Plan } from "@ringwright/core/plan";
import { answerOf } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import { boxOfPlan } from "@ringwright/drawings";
import { english, nameOf, sayIn } from "@ringwright/words";
import { type PlanSection, planInWords } from "@ringwright/words/plan";
import { stack } from "./blocks/block.ts";
import { heading, sizes, text } from "./blocks/text.ts";
import { type Issued, issuedText } from "./issued.ts";
import { firstPage, gaps } from "./parts/first-page.ts";
import { makeDo, readings, signatures, sourceBlocks } from "./parts/ruled.ts";
import { section } from "./parts/sections.ts";
import { restOfSet } from "./parts/set-and-cut.ts";
import { steps } from "./parts/steps.ts";
import { titleBlock } from "./parts/title-block.ts";
import { PdfCanvas } from "./pdf/canvas.ts";
import { bytesOf, type PdfConstructor } from "./pdf/document.ts";
import { Flow } from "./pdf/flow.ts";
import type { CardFonts } from "./pdf/fonts.ts";
import { furniture } from "./pdf/furniture.ts";
import { Typesetter } from "./pdf/typesetter.ts";
import { area, type Paper, papers, type Setting } from "./setting.ts";

export interface CardOptions {
  /** The PDF library: `pdfkit` in Node, `pdfkit/js/pdfkit.standalone.js` in a browser. */
  readonly Document: PdfConstructor;
  readonly fonts: CardFonts;
  readonly system: UnitSystem;
  readonly paper: Paper;
  readonly issued: Issued;
  /** Off to read what was written, in tests. */
  readonly compress?: boolean;
}

/**
 * The card of a plan as the bytes of a PDF: everything needed at a box where
 * no device may go, and room to write what was found. The same plan and
 * options give the same bytes.
 * @throws RangeError when `issued.when` is no time or `issued.boxLink` is too long: programming mistakes.
 * @example await drawCard(found, { Document: PDFDocument, fonts, system: "metric", paper: "a4", issued: { when, version } })
 */
export async function drawCard(found: Found<Plan>, options: CardOptions): Promise<Uint8Array> {
  const { Document, fonts, system, paper, issued } = options;
  const { survey } = found.value;
  const show = { catalogue: english, system };
  const name = survey.name?.trim() || sayIn(show, { id: "plan-unnamed-box" });
  const created = new Date(issued.when);
  if (Number.isNaN(created.getTime())) throw new RangeError(`“${issued.when}” is no time.`);
  const doc = new Document({
    autoFirstPage: false,
    bufferPages: true,
    compress: options.compress ?? true,
    pdfVersion: "1.7",
    tagged: true,
    lang: english.language,
    displayTitle: true,
    font: null,
    info: {
      Title: sayIn(show, { id: "card-title", with: { name } }),
      Creator: sayIn(show, { id: "card-program", with: { version: issued.version } }),
      CreationDate: created,
    },
  });
  const bytes = bytesOf(doc);
  const type = new Typesetter(doc, fonts);
  const setting: Setting = { type, system, words: (id, values = {}) => sayIn(show, { id, with: values }) };
  const canvas = new PdfCanvas(doc, type);
  const tree = doc.struct("Document", {});
  doc.addStructure(tree);
  const flow = new Flow(canvas, papers[paper], tree);
  fill(flow, setting, found, { name, issued });
  furniture(canvas, setting, flow, { name, issued });
  tree.end();
  doc.end();
  return bytes;
}

/** Parts of the plan that the first sheet shows; the rest follow. */
const onFirstPage: ReadonlySet<string> = new Set(["attention", "mind", "set", "cut"]);

function fill(
  flow: Flow,
  setting: Setting,
  found: Found<Plan>,
  { name, issued }: { readonly name: string; readonly issued: Issued },
): void {
  const { words, system } = setting;
  const { width } = area;
  const plan = found.value;
  const said = planInWords(found, system);
  const style = answerOf(plan.chosen.style)?.style;
  const title = titleBlock(
    setting,
    {
      name,
      place: plan.survey.place,
      first: said.first,
      entries: [
        [words("card-issued"), issuedText(issued.when)],
        [words("card-made-with"), words("card-program", { version: issued.version })],
        [words("card-datum"), words(`plan-datum-${plan.survey.datum ?? "top"}`)],
        [words("card-packing"), style === undefined ? "" : nameOf(style)],
      ],
      boxLink: issued.boxLink,
    },
    width,
  );
  firstPage(flow, { setting, plan, words: said, title, name });
  const rest = restOfSet(said);
  if (rest.length > 0) section(flow, setting, { heading: words("card-set-and-gland"), blocks: rest }, width);
  const later = said.sections.filter(({ id }) => !onFirstPage.has(id));
  for (const part of later.filter(({ id }) => id !== "notes" && id !== "gaps")) section(flow, setting, withoutFirst(part), width);
  work(flow, setting, found, said);
  const notes = later.find(({ id }) => id === "notes");
  if (notes) section(flow, setting, notes, width);
  if (said.gaps.length > 0 && boxOfPlan(plan, name)) gaps(flow, setting, said);
  const [first, ...more] = sourceBlocks(setting, said.sources, width);
  flow.together([
    heading(setting, words("card-sources"), width),
    text(setting, words("card-sources-note"), { width, size: sizes.small, ink: "quiet", after: 0.8 }),
    ...(first ? [first] : []),
  ]);
  for (const source of more) flow.together([source]);
}

/** The lantern ring's mark stands on the first sheet, and once is enough. */
function withoutFirst(part: PlanSection): PlanSection {
  return part.id === "lantern" ? { ...part, blocks: part.blocks.filter(({ kind }) => kind !== "mark") } : part;
}

/** The steps with what belongs beside them: when to stop before the start, readings after it, make-dos, signatures. */
function work(flow: Flow, setting: Setting, { value: plan }: Found<Plan>, said: ReturnType<typeof planInWords>): void {
  const { words } = setting;
  const { width } = area;
  const start = said.groups.findIndex(({ id }) => id === "start");
  const before = start < 0 ? said.groups : said.groups.slice(0, start);
  steps(flow, setting, before, width);
  if (said.stopRules.length > 0) {
    flow.together([
      stack([
        heading(setting, words("plan-heading-stop"), width),
        ...said.stopRules.map((rule) => text(setting, rule, { width, lead: "■", after: 0.6 })),
      ]),
    ]);
    flow.gap(3.5);
  }
  if (start >= 0) steps(flow, setting, said.groups.slice(start), width);
  for (const block of readings(setting, plan, width, flow.left)) flow.together([block]);
  flow.gap(3.5);
  if (said.groups.length > 0) flow.together([makeDo(setting, width)]);
  flow.gap(3.5);
  flow.together([signatures(setting, width)]);
  flow.gap(3.5);
}
