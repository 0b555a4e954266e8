import type { Source } from "./source.ts";

/** Papers, theses and training papers with named authors or journals. */
export const papers = {
  "drago-evans-2017": {
    title:
      "J. Drago and W. Evans, Gauging the Force Effects of Valve Stem Packing on Valve Stem Actuation, PVS2017-3518, ASME/NRC Pump and Valve Symposium, 2017",
    seen: "quoted",
    what: "Abstract and introduction",
  },
  "buck-seal-chambers": {
    title: "G. Buck, Estimating the Pressure in Pump Seal Chambers, training paper",
    seen: "read",
    what: "Equations 1, 3 and 5 with their examples",
  },
  "denny-1957": {
    title: "D. F. Denny, A Force Analysis of the Stuffing-Box Seal, BHRA report 550, 1957",
    seen: "memory",
    what: "Title in another paper's reference list; formula from memory and derived again",
  },
  "denny-turnbull-1960": {
    title:
      "D. F. Denny and D. E. Turnbull, Sealing Characteristics of Stuffing-Box Seals for Rotating Shafts, Proc. Institution of Mechanical Engineers 174, 1960",
    seen: "memory",
    what: "Not opened; title from memory",
  },
  "ochonski-1988": {
    title:
      "W. Ochonski, Radial Stress Distribution and Friction Forces in a Soft-Packed Stuffing-Box Seal, Tribology International 21(1), 31-38, 1988",
    seen: "memory",
    what: "Title in another paper's reference list; formula and values from memory",
  },
  "diany-bouzid-2009": {
    title:
      "M. Diany and A.-H. Bouzid, Analytical Evaluation of Stresses and Displacements of Stuffing-Box Packing, Tribology International 42, 2009",
    seen: "memory",
    what: "Title in another paper's reference list; formula from memory",
  },
  "diany-bouzid-2012": {
    title:
      "M. Diany and A.-H. Bouzid, Creep Constitutive Law of Packing Materials Based on Relaxation Tests, ASME J. Tribology 134(1), 012202, 2012",
    seen: "quoted",
    what: "Abstract and reference list; authors from memory",
  },
  "tapered-housing-paper": {
    title:
      "Effect of Tapered Housing on the Axial Stress Distribution in a Stuffing Box Packing, Int. J. of Advancements in Mechanical and Aeronautical Engineering",
    seen: "quoted",
    what: "Abstract",
  },
  "ciortan-macuta": {
    title: "Ciortan and Macuta, paper on stuffing box seals, University of Galati",
    seen: "read",
    what: "Introduction; title not noted",
  },
  "upc-lateral-pressure-1991": {
    title: "Paper on the lateral pressure of packing, J. of the University of Petroleum (China), 1991 no. 3, 84-93",
    seen: "quoted",
    what: "Abstract; its numbers not seen",
  },
  "aweimer-bouzid-2019": {
    title:
      "A. S. O. Aweimer and A.-H. Bouzid, Evaluation of Interfacial and Permeation Leaks in Gaskets and Compression Packing, ASME J. Nuclear Engineering and Radiation Science 5(1), 2019",
    seen: "quoted",
    what: "Abstract",
  },
  "aweimer-bouzid-2020": {
    title:
      "A. S. O. Aweimer, A.-H. Bouzid and Z. Zhao, Leakage Estimate in Nonuniformly Compressed Packing Rings, ASME J. Nuclear Engineering and Radiation Science 6(2), 2020",
    seen: "quoted",
    what: "Abstract",
  },
  "aweimer-bouzid-2022": {
    title:
      "A. S. O. Aweimer and A.-H. Bouzid, On the Modeling of Gas and Liquid Leaks Through Packed Glands, ASME J. Pressure Vessel Technology 144(5), 2022",
    seen: "quoted",
    what: "Abstract",
  },
  "bouzid-2021": {
    title: "A.-H. Bouzid, A Study on Liquid Leak Rates in Packing Seals, Applied Sciences 11(4), 1936, 2021",
    seen: "quoted",
    what: "Abstract",
  },
  "tao-donovan-1955": {
    title: "L. N. Tao and W. F. Donovan, Through-Flow in Concentric and Eccentric Annuli of Fine Clearance, Trans. ASME 77, 1955",
    seen: "quoted",
    what: "Abstract; the leak formula itself from memory",
  },
  "kirby-1956": {
    title: "R. K. Kirby, Thermal Expansion of Polytetrafluoroethylene, NBS J. of Research 57, RP2696, 1956",
    seen: "quoted",
    what: "Abstract",
  },
  "cermak-2020": {
    title:
      "M. Cermak, N. Perez, M. Collins and M. Bahrami, Material Properties and Structure of Natural Graphite Sheet, Scientific Reports 10, 2020, doi 10.1038/s41598-020-75393-y",
    seen: "quoted",
    what: "Abstract and introduction",
  },
  "rewolinska-graphite-friction": {
    title: "A. Rewolinska, Experimental tests of static friction coefficient of expanded graphite on steel, Mechanika (Kaunas)",
    seen: "quoted",
    what: "Abstract: a ranking, no numbers; part of the title cut",
  },
  "roe-torrance-2008": {
    title: "M. Roe and A. A. Torrance, paper on friction and wear of exfoliated graphite valve stem seals, Tribology International, 2008",
    seen: "quoted",
    what: "Abstract, no numbers",
  },
  "pvp-2017-inhibited-graphite": {
    title: "Paper proposing a definition of oxidation-inhibited graphite, ASME PVP2017, V002T02A008",
    seen: "quoted",
    what: "Abstract",
  },
  "imece-2019-packing-properties": {
    title: "Paper on mechanical properties of compression packing at high temperature, ASME IMECE2019, V009T11A053",
    seen: "quoted",
    what: "Abstract",
  },
  "rodery-2017": {
    title: "Rodery, PVP2017-65993, history of the bolt torque table of ASME PCC-1",
    seen: "memory",
    what: "Named only; what was seen of it was not noted",
  },
  "bauer-2009": {
    title: "T. Bauer et al., Sodium Nitrate for High Temperature Latent Heat Storage, Effstock, 2009",
    seen: "quoted",
    what: "Abstract",
  },
  "aramid-degradation-2010": {
    title: "Degradation of Aramid Fibers under Alkaline and Neutral Conditions, J. Applied Polymer Science, 2010, doi 10.1002/app.31145",
    seen: "quoted",
    what: "Abstract",
  },
  "asm-sleeve-wear": {
    title: "ASM Failure Analysis Case Histories, hard-faced stainless pump sleeve worn by river silt, 2019",
    seen: "quoted",
    what: "Abstract",
  },
  "ridgway-2010": {
    title: "N. I. Ridgway, Slurry Pump Gland Seal Three Body Wear, PhD thesis, University of Adelaide, 2010",
    seen: "read",
    what: "Introduction only, no wear numbers",
  },
  "bengtsson-2015": {
    title: "M. Bengtsson, essay on corrosion under graphite packing, Uppsala University, 2015",
    seen: "quoted",
    what: "Excerpt; title not noted",
  },
  "japan-tappi-agitator-seals": {
    title: "Paper on agitator shaft seals in a pulp mill, Japan TAPPI Journal 69(5), 490",
    seen: "quoted",
    what: "Abstract",
  },
  "fluorocarbon-pyrolysis-1993": {
    title: "Polymer fume fever and other fluorocarbon pyrolysis-related syndromes, Occupational Medicine 8(3), 519-531, 1993",
    seen: "quoted",
    what: "Abstract",
  },
  "millette-1993": {
    title:
      "J. R. Millette and M. D. Mount, A Study Determining Asbestos Fiber Release during the Removal of Valve Packing, Applied Occupational and Environmental Hygiene 8(9), 790-793, 1993",
    seen: "quoted",
    what: "Abstract or excerpt; title and second author from memory",
  },
  "aiha-2002-gaskets": {
    title:
      "Airborne Fiber Exposure Assessment of Dry Asbestos-Containing Gaskets and Packings Found in Intact Industrial and Maritime Fittings, AIHA Journal 63(6), 732-740, 2002",
    seen: "quoted",
    what: "Abstract",
  },
  "madl-2014": {
    title:
      "A. K. Madl et al., Airborne Asbestos Exposures Associated with Gasket and Packing Replacement, Regulatory Toxicology and Pharmacology 69, 304, 2014",
    seen: "quoted",
    what: "Abstract",
  },
} as const satisfies Record<string, Source>;
