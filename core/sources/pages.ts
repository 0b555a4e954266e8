import type { Source } from "./source.ts";

/** Trade pages and case texts: for causes and opinions, never as an authority. */
export const pages = {
  "failure-code-list": {
    title: "Web list of equipment failure codes citing ISO 14224",
    seen: "read",
    what: "Excerpt of the page",
  },
  "packing-failure-causes": {
    title: "Trade page on causes of packing failure",
    seen: "read",
    what: "Excerpt of the text",
  },
  "old-packing-root-cause": {
    title: "Packing supplier's page on root cause from old packing",
    seen: "read",
    what: "Excerpt of the text",
  },
  "packing-how-to": {
    title: "Packing supplier's how-to page",
    seen: "read",
    what: "Excerpt of the text",
  },
  "inner-rings-page": {
    title: "Trade page on inner rings left in the box",
    seen: "read",
    what: "Excerpt of the text",
  },
  "ring-installation-page": {
    title: "Trade page on installing rings",
    seen: "read",
    what: "Excerpt of the text",
  },
  "general-drip-page": {
    title: "Trade page on pump packing and its drip",
    seen: "read",
    what: "Excerpt of the text",
  },
  "packing-life-page": {
    title: "Trade page on the end of packing life",
    seen: "read",
    what: "Excerpt of the text",
  },
  "stem-corrosion-note": {
    title: "Trade note on stem corrosion under graphite",
    seen: "read",
    what: "Excerpt of the text",
  },
  "truck-pump-rope-guide": {
    title: "Truck-parts seller's rope seal guide",
    seen: "read",
    what: "Excerpt of the text",
  },
  "undersize-rods-page": {
    title: "Compressor web page on undersize rods",
    seen: "read",
    what: "Excerpt of the text",
  },
  "hard-rods-article": {
    title: "Article on compressor packing and rod hardness",
    seen: "read",
    what: "One page",
  },
  "sleeve-materials-article": {
    title: "Pump maintenance article on sleeve materials and coatings",
    seen: "read",
    what: "One page",
  },
  "base-ring-article": {
    title: "Pump service article on base rings and lantern rings",
    seen: "read",
    what: "One page",
  },
  "sleeve-clause-note": {
    title: "Note on sleeves, copy of a construction specification clause",
    seen: "read",
    what: "Excerpt of the text",
  },
  "pump-association-answers": {
    title: "Pump web page, questions and answers on packing",
    seen: "read",
    what: "Excerpt of the text",
  },
  "gate-valve-page": {
    title: "Web troubleshooting page on gate valve stem packing",
    seen: "read",
    what: "Excerpt of the text",
  },
  "runout-origin-page": {
    title: "Seal question page on the origin of the 0.002 inch limit",
    seen: "read",
    what: "Excerpt of the text",
  },
  "alignment-shop-page": {
    title: "Machine shop's page on alignment",
    seen: "read",
    what: "Excerpt of the text",
  },
  "mill-flush-case": {
    title: "Pump service firm's mill case on flush water",
    seen: "read",
    what: "Excerpt of the text",
  },
  "energy-trade-text": {
    title: "Trade text on packing and energy by brake analogy",
    seen: "read",
    what: "Excerpt of the text",
  },
  "energy-answer-page": {
    title: "Question and answer page on the energy taken by packing",
    seen: "read",
    what: "Excerpt of the text",
  },
  "gearbox-reliability-case": {
    title: "Reliability case on a mixer gearbox bearing lost past neglected packing",
    seen: "read",
    what: "Excerpt of the text",
  },
} as const satisfies Record<string, Source>;
