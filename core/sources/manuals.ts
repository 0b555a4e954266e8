import type { Source } from "./source.ts";

/** Manuals and notes of machine makers, cited without their names. */
export const manuals = {
  "pump-manual-1": {
    title: "Pump maker's instruction manual, first of seven",
    seen: "read",
    what: "One page",
  },
  "pump-manual-2": {
    title: "Pump maker's instruction manual, second of seven",
    seen: "read",
    what: "One page",
  },
  "pump-manual-3": {
    title: "Pump maker's instruction manual, third of seven",
    seen: "read",
    what: "One page",
  },
  "pump-manual-4": {
    title: "Pump maker's instruction manual, fourth of seven",
    seen: "read",
    what: "One page",
  },
  "pump-manual-5": {
    title: "Pump maker's instruction manual, fifth of seven",
    seen: "read",
    what: "Page 10",
  },
  "pump-manual-6": {
    title: "Rotary-pump maker's service manual, sixth of seven pump manuals",
    seen: "read",
    what: "Section E.11",
  },
  "pump-manual-7": {
    title: "ANSI chemical-pump maker's instruction manual, seventh of seven pump manuals",
    seen: "read",
    what: "Dimension table of appendix 5; which runout limit applies with a sleeve is unclear",
  },
  "axial-flow-pump-manual": {
    title: "Axial-flow pump maker's manual",
    seen: "read",
    what: "Page 80",
  },
  "fire-pump-manual": {
    title: "Fire-pump maker's manual",
    seen: "read",
    what: "Page 37",
  },
  "fire-pump-overhaul-manual": {
    title: "Fire-pump maker's overhaul manual",
    seen: "read",
    what: "Several pages, among them section 2109.1, p. 12",
  },
  "irrigation-pump-tip": {
    title: "Irrigation-pump maker's tip on running in packing",
    seen: "read",
    what: "Excerpt of the page",
  },
  "liquid-ring-pump-tips-1": {
    title: "Liquid-ring pump maker's packing tips, first part",
    seen: "read",
    what: "Excerpt of the text",
  },
  "liquid-ring-pump-tips-2": {
    title: "Liquid-ring pump maker's packing tips, second part",
    seen: "read",
    what: "Excerpt of the text",
  },
  "slurry-pump-troubleshooting": {
    title: "Slurry-pump maker's troubleshooting text",
    seen: "read",
    what: "Excerpt of the text",
  },
  "slurry-seal-sheet": {
    title: "Slurry-seal maker's sheet",
    seen: "read",
    what: "Page 3",
  },
  "plunger-pump-parts-note": {
    title: "Plunger-pump seller's note on part replacement",
    seen: "read",
    what: "Excerpt of the text",
  },
  "slaker-maker-answers": {
    title: "Slaker maker's questions and answers",
    seen: "read",
    what: "Excerpt of the text",
  },
  "mixer-manual-1": {
    title: "Mixer maker's manual with grease-lubricated boxes",
    seen: "read",
    what: "Page 20",
  },
  "mixer-manual-2": {
    title: "Mixer maker's operation and maintenance manual, 2015",
    seen: "read",
    what: "Page 17",
  },
  "boat-builder-manual": {
    title: "Boat builder's owner manual",
    seen: "read",
    what: "One page",
  },
} as const satisfies Record<string, Source>;
