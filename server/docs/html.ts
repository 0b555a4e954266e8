import { english } from "@ringwright/words";

/** Text as it may stand in HTML, in an element or an attribute. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** A whole page; `content` is HTML already. */
export function page(title: string, content: readonly string[]): string {
  return [
    "<!doctype html>",
    `<html lang="${english.language}">`,
    "<head>",
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(title)}</title>`,
    '<link rel="icon" href="data:,">',
    '<link rel="stylesheet" href="/docs/page.css">',
    "</head>",
    "<body>",
    "<main>",
    ...content,
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** JSON that opens when it is asked for. */
export function folded(title: string, json: unknown): string {
  return `<details><summary>${escaped(title)}</summary><pre tabindex="0"><code>${escaped(JSON.stringify(json, null, 2))}</code></pre></details>`;
}

/** The one style of these pages. */
export const style = `:root { color-scheme: light dark; }
body { margin: 0; font: 1rem/1.5 "Atkinson Hyperlegible Next", "DejaVu Sans", sans-serif; background: Canvas; color: CanvasText; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem 1.25rem 4rem; }
h1, h2, h3 { line-height: 1.2; }
h2 { margin-top: 2.5rem; border-bottom: 1px solid; padding-bottom: 0.25rem; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.4rem 0.8rem 0.4rem 0; border-bottom: 1px solid GrayText; }
code, pre { font-family: "DejaVu Sans Mono", monospace; font-size: 0.9em; overflow-wrap: anywhere; }
pre { overflow: auto; max-height: 32rem; padding: 0.75rem; border: 1px solid GrayText; overflow-wrap: normal; }
summary { cursor: pointer; padding: 0.6rem 0; }
a { display: inline-block; padding: 0.2rem 0; color: LinkText; }
:focus-visible { outline: 3px solid; outline-offset: 2px; }
`;
