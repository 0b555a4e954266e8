import type { Source } from "./source.ts";

/** Articles and columns of the trade press and trade associations, and training texts. */
export const trade = {
  "azibert-2015": {
    title: "H. Azibert (FSA), Energy efficiency of compression packings in rotodynamic pump applications, Pumps & Systems, August 2015",
    seen: "read",
    what: "Parts of the text, no graphs",
  },
  "fsa-esa-technical-manual-2018": {
    title: "FSA and ESA, Compression Packing Technical Manual, 4th ed., 2018",
    seen: "quoted",
    what: "Contents page only",
  },
  "fsa-packing-friction": {
    title: "FSA, Sealing Sense on packing friction, Pumps & Systems",
    seen: "read",
    what: "Beginning",
  },
  "fsa-loading-precision-2024": {
    title: "FSA, Sealing Sense on precision of valve packing load, Pumps & Systems, 2024",
    seen: "read",
    what: "Beginning",
  },
  "fsa-flush-pressure": {
    title: "FSA, Sealing Sense on packing installation and flush pressure, Pumps & Systems",
    seen: "read",
    what: "Beginning, and a trade magazine's copy",
  },
  "fsa-valve-friction": {
    title: "FSA, Sealing Sense on valve packing friction, Pumps & Systems",
    seen: "read",
    what: "Beginning",
  },
  "fsa-valve-tests": {
    title: "FSA, Sealing Sense comparing ISO 15848-1 and API 641, Pumps & Systems",
    seen: "read",
    what: "Beginning",
  },
  "fsa-valve-compression-2016": {
    title: "FSA, Sealing Sense, valve stem packing compression and installation, Pumps & Systems, January 2016",
    seen: "read",
    what: "First part and part of the second",
  },
  "fsa-valve-leak-2016": {
    title: "R. Frisard (FSA), Sealing Sense, valve packing need not leak, Pumps & Systems, March 2016",
    seen: "read",
    what: "Page with the control valve case of 1996",
  },
  "fsa-lantern-rings": {
    title: "FSA, Sealing Sense on pump packing life and lantern rings, Pumps & Systems",
    seen: "read",
    what: "Excerpt from a reposted copy",
  },
  "fsa-eptfe-graphite-2016": {
    title: "C. H. Jones (FSA), Sealing Sense on ePTFE and graphite packing fibre, Pumps & Systems, August 2016",
    seen: "read",
    what: "Article",
  },
  "fsa-graphite-packing": {
    title: "FSA, Sealing Sense, benefits and pitfalls of graphite packing, part one",
    seen: "read",
    what: "First page",
  },
  "fsa-injectable-2013": {
    title: "FSA, Sealing Sense on injectable sealants, April 2013",
    seen: "read",
    what: "Second page",
  },
  "fsa-graphite-density-2014": {
    title: "FSA, Sealing Sense on installed density and weight loss of flexible graphite, October 2014",
    seen: "read",
    what: "First part",
  },
  "fsa-galvanic-2019": {
    title: "FSA, How to prevent galvanic corrosion on valve stems, Pumps & Systems, October 2019",
    seen: "read",
    what: "Introduction",
  },
  "esa-galvanic-column": {
    title: "M. Rotar (ESA), How do I prevent galvanic corrosion in my packing gland?, Valve World",
    seen: "read",
    what: "First part; galvanic table not seen",
  },
  "flow-control-2014": {
    title: "How pumping system design affects sealing performance, Flow Control, 2014",
    seen: "read",
    what: "Beginning",
  },
  "pumps-systems-inspection": {
    title: "Article on equipment inspection for packing reliability, Pumps & Systems",
    seen: "read",
    what: "Excerpt of the text",
  },
  "machine-design-packings": {
    title: "Compression packings, Machine Design, reference article",
    seen: "read",
    what: "Article",
  },
  "elsey-2016": {
    title: "J. Elsey, article on why pumps fail, Efficient Plant, 2016",
    seen: "read",
    what: "Excerpt",
  },
  "bloch-mtbr-2008": {
    title: "H. P. Bloch, article on mean time between repairs, Efficient Plant, 2008",
    seen: "read",
    what: "Excerpt",
  },
  "bloch-alignment": {
    title: "H. P. Bloch, articles on alignment, Maintenance Technology",
    seen: "read",
    what: "Excerpts",
  },
  "efficient-plant-alignment-2018": {
    title: "Article on shaft alignment, Efficient Plant, December 2018",
    seen: "read",
    what: "Excerpt",
  },
  "idle-packing-article": {
    title: "Article on decades-old packing in idle machines, reliability magazine",
    seen: "read",
    what: "Excerpt",
  },
  "mtbf-letter": {
    title: "Letter on counting failures, reliability magazine",
    seen: "read",
    what: "Excerpt of the text",
  },
  "bachus-letters": {
    title: "L. Bachus, letters column on pump packing, trade magazine",
    seen: "read",
    what: "Excerpt of the column",
  },
  "oxygen-valves-article": {
    title: "Article on oxygen service, Valve World Americas",
    seen: "read",
    what: "Excerpt",
  },
  "stern-gland-article": {
    title: "Trade magazine on flax, PTFE flax and graphite stern gland packing, quoting a packing maker",
    seen: "read",
    what: "One page",
  },
  "packing-inspection-article": {
    title: "Trade article on inspecting old packing",
    seen: "read",
    what: "Excerpt of the text",
  },
  "gongol-2014": {
    title: "B. Gongol, talk on wastewater pump maintenance, 2014",
    seen: "read",
    what: "Excerpt of the text",
  },
  "reeves-drops": {
    title: "W. Reeves, column on drops and millilitres",
    seen: "read",
    what: "Text",
  },
  "power-plant-packing-training": {
    title: "Power-plant training text, Packing and Gaskets",
    seen: "read",
    what: "Excerpts",
  },
  "water-operator-text": {
    title: "Water operators' training text on pump packing, origin not shown",
    seen: "read",
    what: "Excerpt of the text",
  },
  "nut-factor-scatter-article": {
    title: "Trade article on the scatter of the nut factor",
    seen: "read",
    what: "Text",
  },
  "bolt-torque-article": {
    title: "Maintenance article on bolt torque and nut factor, with a torque chart",
    seen: "read",
    what: "Text",
  },
} as const satisfies Record<string, Source>;
