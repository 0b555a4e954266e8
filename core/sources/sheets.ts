import type { Source } from "./source.ts";

/** Data sheets, torque sheets and articles of packing and material makers, cited without their names. */
export const sheets = {
  "packing-torque-sheet-1996": {
    title: "Packing maker's valve torque sheet, 8 February 1996",
    seen: "read",
    what: "Whole sheet",
  },
  "packing-torque-table": {
    title: "Packing maker's printed torque table for die-formed graphite sets, p. A-28",
    seen: "read",
    what: "Large part; the note naming bolt size and number cut off",
  },
  "valve-packing-sheet": {
    title: "Packing maker's valve packing installation sheet",
    seen: "read",
    what: "Text",
  },
  "valve-maker-iso-15848-note": {
    title: "Valve maker's note on ISO 15848-1",
    seen: "read",
    what: "Text",
  },
  "valve-tests-comparison": {
    title: "Valve maker's comparison table of fugitive emission tests",
    seen: "read",
    what: "Table",
  },
  "packing-failure-clues": {
    title: "Packing maker's list of failure clues, reprinted by another",
    seen: "read",
    what: "Excerpt of the text",
  },
  "failed-packing-article": {
    title: "Packing maker's article on failed packing",
    seen: "read",
    what: "Excerpt of the text",
  },
  "packing-installation-page": {
    title: "Packing maker's installation page",
    seen: "read",
    what: "Excerpt of the text",
  },
  "packing-sheet-1": {
    title: "Packing distributor's chart, three pump styles",
    seen: "read",
    what: "One sheet; from the distributor of sheets 3, 11 and 13",
  },
  "packing-sheet-2": {
    title: "Packing maker's page, three styles",
    seen: "read",
    what: "One sheet; from the maker of sheet 23",
  },
  "packing-sheet-3": {
    title: "Packing distributor's sheet, novoloid blend",
    seen: "read",
    what: "One sheet; from the distributor of sheets 1, 11 and 13",
  },
  "packing-sheet-4": {
    title: "Packing maker's comparison of PTFE and graphite for valve stems",
    seen: "read",
    what: "One sheet",
  },
  "packing-sheet-5": {
    title: "Packing maker's glossary entry on graphite packing",
    seen: "read",
    what: "One sheet",
  },
  "packing-sheet-6": {
    title: "Packing maker's sheet, properties of PTFE gland packing",
    seen: "read",
    what: "One sheet",
  },
  "flexible-graphite-sheet": {
    title: "Maker's sheet, properties of flexible graphite sheet",
    seen: "read",
    what: "One sheet",
  },
  "moulded-ptfe-sheet": {
    title: "Maker's property table of moulded PTFE",
    seen: "read",
    what: "One sheet",
  },
  "ptfe-expansion-sheet": {
    title: "PTFE maker's sheet with thermal expansion",
    seen: "read",
    what: "Range of expansion",
  },
  "packing-sheet-9": {
    title: "Maker's design manual, chemical and oxidation limits of graphite sheet",
    seen: "read",
    what: "One page",
  },
  "packing-sheet-10": {
    title: "Maker's resistance list of expanded graphite, machine-translated",
    seen: "read",
    what: "One page",
  },
  "packing-sheet-11": {
    title: "Distributor's article on packing for abrasive service",
    seen: "read",
    what: "One page; from the distributor of sheet 1",
  },
  "packing-sheet-12": {
    title: "Maker's article on braid types and rubber cores for mixers",
    seen: "read",
    what: "One page",
  },
  "packing-sheet-13": {
    title: "Distributor's article with a pressure rule for plant-fibre packing",
    seen: "read",
    what: "One page, sentence cut off; from the distributor of sheet 1",
  },
  "packing-maker-answer": {
    title: "Packing maker's answers on number of rings, stress ratio and spacers",
    seen: "read",
    what: "One answer",
  },
  "packing-sheet-18": {
    title: "Maker's page on a historic oil-impregnated packing",
    seen: "read",
    what: "One page",
  },
  "packing-sheet-19": {
    title: "Supplier's page on filter fibres: cotton, glass, meta-aramid",
    seen: "read",
    what: "One page",
  },
  "packing-sheet-20": {
    title: "Maker's page, thermal data of PTFE",
    seen: "read",
    what: "One page; from the maker of sheet 6",
  },
  "packing-sheet-21": {
    title: "Hose supplier's page, chemical exceptions and temperatures of PTFE",
    seen: "read",
    what: "One page",
  },
  "packing-sheet-22": {
    title: "Maker's article on graphite with added PTFE at 400 and 593 degrees",
    seen: "read",
    what: "First part; from the maker behind sheets 1 and 3",
  },
  "packing-sheet-23": {
    title: "Maker's training page, basic properties of graphite and PTFE",
    seen: "read",
    what: "One page; from the maker of sheet 2",
  },
  "packing-sheet-24": {
    title: "Maker's article on sealing oxygen service",
    seen: "read",
    what: "One page; from the maker of sheet 22",
  },
  "packing-sheet-25": {
    title: "Maker's catalogue data in a public repository: aramid and pure PTFE",
    seen: "read",
    what: "One listing",
  },
  "stainless-maker-note": {
    title: "Stainless steel maker's corrosion note on graphite gaskets",
    seen: "read",
    what: "One page",
  },
  "packing-selection-guide": {
    title: "Packing maker's selection guide",
    seen: "read",
    what: "Introduction, in two copies",
  },
  "item-sheet": {
    title: "Data sheet, chart or certificate of the item itself, as recorded by the user",
    seen: "quoted",
    what: "Entered by whoever asked; nothing of it is checked here",
  },
} as const satisfies Record<string, Source>;
