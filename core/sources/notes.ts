import type { Source } from "./source.ts";

/** Web notes that a number was taken from: for ranges, never as an authority. */
export const notes = {
  "pump-service-repack-notes": {
    title: "Pump service firm's repacking notes",
    seen: "read",
    what: "Text",
  },
  "adjustment-note-2": {
    title: "Web note on adjusting packing: one flat every 20 minutes",
    seen: "read",
    what: "Text",
  },
  "fire-pump-drip-notes": {
    title: "Web notes on the drip of fire-pump packing: one drop a second",
    seen: "read",
    what: "Text",
  },
  "adjustment-note-4": {
    title: "Web note on adjusting packing: 20 to 40 drops a minute",
    seen: "read",
    what: "Text",
  },
  "plunger-packing-note": {
    title: "Web page on plunger packing: 40 to 60 drops a minute",
    seen: "read",
    what: "Text",
  },
  "five-rings-note": {
    title: "Web note on pump packing: at least five rings",
    seen: "read",
    what: "Text",
  },
  "adjustment-note-8": {
    title: "Web note on adjusting packing: an eighth of a turn",
    seen: "read",
    what: "Text",
  },
  "pressure-velocity-note": {
    title: "Web note on the product of pressure and speed",
    seen: "read",
    what: "Text",
  },
  "mechanical-seal-leak-note": {
    title: "Web note on the leak of mechanical seals",
    seen: "read",
    what: "Text",
  },
  "slurry-pump-article-1": {
    title: "Web article on slurry-pump glands: flush above box pressure",
    seen: "read",
    what: "Text",
  },
  "slurry-pump-article-2": {
    title: "Web article on slurry-pump glands: flush above discharge pressure",
    seen: "read",
    what: "Text",
  },
  "seal-cavity-note": {
    title: "Note on the pressure in the seal cavity of centrifugal pumps and mixers",
    seen: "read",
    what: "Equation 1 and its example",
  },
  "chinese-sealing-text": {
    title: "Chinese sealing text on leakage of soft packing, reprint",
    seen: "quoted",
    what: "Two pages; table 4-10 not seen",
  },
  "ptfe-transitions-note": {
    title: "Notes on the phase transitions of PTFE",
    seen: "read",
    what: "Text",
  },
  "aramid-reference-page": {
    title: "Polymer property reference page on aramid fibres",
    seen: "read",
    what: "Page",
  },
  "operator-valve-standard": {
    title: "Operating company's valve standard on packing temperatures",
    seen: "quoted",
    what: "Quoted on a control valve training page",
  },
  "leak-zero-and-pegged-note": {
    title: "Explanation of default-zero and pegged leak rates",
    seen: "read",
    what: "Text",
  },
  "nut-factor-bands-note": {
    title: "Web note on nut factors: dry, oiled, anti-seize",
    seen: "read",
    what: "Text",
  },
  "bolt-preload-example": {
    title: "Web note on metric bolt preload and torque",
    seen: "read",
    what: "Worked example, M12 class 8.8",
  },
  "thread-friction-note": {
    title: "Web note on thread geometry and friction",
    seen: "read",
    what: "Text",
  },
  "dripping-tap-leaflets": {
    title: "Water utilities' leaflets on dripping taps",
    seen: "read",
    what: "Text",
  },
  "drop-factor-table": {
    title: "Table of drop factors",
    seen: "read",
    what: "Table",
  },
} as const satisfies Record<string, Source>;
