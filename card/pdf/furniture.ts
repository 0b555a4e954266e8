import { colours } from "@ringwright/drawings";
import { sizes } from "../blocks/text.ts";
import { type Issued, issuedText } from "../issued.ts";
import { area, type Setting } from "../setting.ts";
import type { PdfCanvas } from "./canvas.ts";
import type { Flow } from "./flow.ts";

/** What stands on every sheet: which box, which page of how many, who decides, when it was issued. */
export function furniture(
  canvas: PdfCanvas,
  setting: Setting,
  flow: Flow,
  { name, issued }: { readonly name: string; readonly issued: Issued },
): void {
  const { words, type } = setting;
  const { doc } = canvas;
  const [left, top] = flow.corner;
  const [right, bottom] = [left + area.width, top + area.height];
  const [short = ""] = type.shortened(name, area.width - 40, sizes.small, true, 1);
  const program = words("card-program", { version: issued.version });
  for (let page = 0; page < flow.pages; page++) {
    doc.switchToPage(page);
    doc.markContent("Artifact", { type: "Pagination" });
    canvas.write(short, [left, top + 3.2], { size: sizes.small, bold: true });
    canvas.write(words("card-sheet", { page: page + 1, pages: flow.pages }), [right, top + 3.2], { size: sizes.small, anchor: "end" });
    canvas.rule([left, top + 5], [right, top + 5], 0.12, colours.quiet);
    canvas.rule([left, bottom - 4.6], [right, bottom - 4.6], 0.12, colours.quiet);
    canvas.write(words("card-closing"), [left, bottom - 1], { size: sizes.small, bold: true });
    canvas.write(words("card-as-issued", { program, when: issuedText(issued.when) }), [right, bottom - 1], {
      size: sizes.small,
      ink: "quiet",
      anchor: "end",
    });
    doc.endMarkedContent();
  }
}
