import type { Source } from "./source.ts";

/** Standards and releases of standards bodies. */
export const standards = {
  "iso-898-1": {
    title: "ISO 898-1, Mechanical properties of fasteners made of carbon steel and alloy steel, part 1: bolts, screws and studs",
    seen: "quoted",
    what: "Tables of proof load, stress area, proof stress and property classes in reprints; edition not noted",
  },
  "iso-3506-1": {
    title: "ISO 3506-1, Mechanical properties of corrosion-resistant stainless steel fasteners, part 1: bolts, screws and studs",
    seen: "quoted",
    what: "Stresses of classes 50, 70 and 80 in a reprinted table; edition not noted",
  },
  "iso-261": {
    title: "ISO 261, ISO general purpose metric screw threads: general plan",
    seen: "quoted",
    what: "Coarse pitches M3 to M39 in a reprinted table; edition not noted",
  },
  "iso-724": {
    title: "ISO 724, ISO general-purpose metric screw threads: basic dimensions",
    seen: "memory",
    what: "Not opened; the geometry follows from the 60 degree profile",
  },
  "iso-68-1": {
    title: "ISO 68-1, ISO general purpose screw threads, basic profile: metric screw threads",
    seen: "memory",
    what: "Not opened",
  },
  "iso-4014": {
    title: "ISO 4014, Hexagon head bolts, product grades A and B",
    seen: "memory",
    what: "Not opened",
  },
  "iso-273": {
    title: "ISO 273, Fasteners: clearance holes for bolts and screws",
    seen: "memory",
    what: "Not opened",
  },
  "asme-b1-1": {
    title: "ASME B1.1, Unified inch screw threads",
    seen: "memory",
    what: "Not opened; threads per inch from memory",
  },
  "din-946": {
    title: "DIN 946, Determination of coefficient of friction of bolt and nut assemblies",
    seen: "quoted",
    what: "Quantities of the long torque formula through a web note",
  },
  "vdi-2230": {
    title: "VDI 2230 part 1, Systematic calculation of highly stressed bolted joints, editions of 2001 and 2003",
    seen: "quoted",
    what: "Fine-thread table for class 8.8 reprinted in a fastener catalogue; the long torque formula from memory",
  },
  "sae-j429": {
    title: "SAE J429, Mechanical and material requirements for externally threaded fasteners",
    seen: "memory",
    what: "Not opened; proof stresses of grades 2, 5 and 8 from memory",
  },
  "astm-a193": {
    title: "ASTM A193, Alloy-steel and stainless steel bolting for high temperature or high pressure service",
    seen: "memory",
    what: "Not opened; 0.2 % stresses of grades B7 and B8 from memory",
  },
  "asme-pcc-1-2013": {
    title: "ASME PCC-1-2013, Guidelines for pressure boundary bolted flange joint assembly",
    seen: "read",
    what: "Table 1",
  },
  "iso-9908-1993": {
    title: "ISO 9908:1993, Technical specifications for centrifugal pumps, class III",
    seen: "quoted",
    what: "Excerpt of clauses 4.10.1 to 4.10.6",
  },
  "api-610": {
    title: "API Std 610, Centrifugal pumps, editions that still covered packing",
    seen: "memory",
    what: "Not opened",
  },
  "din-3780-1954": {
    title: "DIN 3780:1954, Stuffing box packings: diameters and widths",
    seen: "memory",
    what: "Not opened; widths from memory",
  },
  "din-28163-1983": {
    title: "DIN 28163:1983, Stuffing boxes for agitator shafts",
    seen: "read",
    what: "Scope on the first page; dimensions not seen; title from memory",
  },
  "en-16752-2015": {
    title: "EN 16752:2015, Centrifugal pumps: test procedure for seal packings",
    seen: "quoted",
    what: "Cover only",
  },
  "iso-15848-1-2015": {
    title: "ISO 15848-1:2015, Industrial valves: measurement, test and qualification procedures for fugitive emissions, part 1",
    seen: "quoted",
    what: "Class AH, cycle and temperature classes through a valve maker's note; classes B and C from memory",
  },
  "api-622-2018": {
    title: "API Std 622, Type testing of process valve packing for fugitive emissions, 3rd ed., 2018",
    seen: "quoted",
    what: "Excerpts of the material tests (6.1) and of the leak calibration; the edition of one excerpt not shown",
  },
  "api-622-addendum-2022": {
    title: "API Std 622, addendum 1, 2022",
    seen: "quoted",
    what: "Excerpt: fixtures and number of cycles",
  },
  "api-624-2014": {
    title: "API Std 624, Type testing of rising stem valves equipped with flexible graphite packing for fugitive emissions, 2014",
    seen: "quoted",
    what: "Scope page",
  },
  "api-641": {
    title: "API Std 641, Type testing of quarter-turn valves for fugitive emissions",
    seen: "quoted",
    what: "Test gas through a trade association article; number of cycles and limit from memory",
  },
  "iso-14224-2016": {
    title: "ISO 14224:2016, Collection and exchange of reliability and maintenance data for equipment",
    seen: "quoted",
    what: "Excerpt of table B.2",
  },
  "jb-t-7370-1994": {
    title: "JB/T 7370-1994, Flexible graphite braided packing",
    seen: "read",
    what: "Scope, designation system, chloride limit",
  },
  "astm-e140": {
    title: "ASTM E140, Standard hardness conversion tables for metals",
    seen: "memory",
    what: "Not opened; ten rows of table 1 (non-austenitic steels, Rockwell C) as recalled",
  },
  "astm-g63": {
    title: "ASTM G63, Guide for evaluating nonmetallic materials for oxygen service, editions of 1999 (2007) and 2015",
    seen: "read",
    what: "Scope",
  },
  "cga-g-4-1-1985": {
    title: "CGA G-4.1-1985, Cleaning equipment for oxygen service",
    seen: "quoted",
    what: "Class of practice only",
  },
  "nsf-ansi-61": {
    title: "NSF/ANSI 61, Drinking water system components: health effects",
    seen: "quoted",
    what: "Through secondary pages",
  },
  "nsf-ansi-51": {
    title: "NSF/ANSI 51, Food equipment materials",
    seen: "quoted",
    what: "Through secondary pages",
  },
  "bs-6920": {
    title: "BS 6920, Suitability of non-metallic materials for use in contact with water for human consumption",
    seen: "memory",
    what: "Not opened",
  },
  "nfpa-25": {
    title: "NFPA 25, Inspection, testing and maintenance of water-based fire protection systems",
    seen: "quoted",
    what: "Copies of the clauses on weekly pump tests; they differ by edition",
  },
  "ansi-asa-s2-75-2017": {
    title: "ANSI/ASA S2.75-2017, Shaft alignment methodology",
    seen: "quoted",
    what: "Existence and scope through a trade article of 2018",
  },
  "jcgm-100-2008": {
    title: "JCGM 100:2008, Evaluation of measurement data: guide to the expression of uncertainty in measurement",
    seen: "quoted",
    what: "Annexes H.1 to H.3 in public copies; raw data of H.2 from memory",
  },
  "usp-32-1101": {
    title: "United States Pharmacopeia 32, general chapter 1101, Medicine dropper",
    seen: "read",
    what: "The whole chapter, in a public copy",
  },
  "iapws-r7-97": {
    title: "IAPWS R7-97(2012), Industrial formulation 1997 for the thermodynamic properties of water and steam",
    seen: "quoted",
    what: "Coefficients through an open-source port, check values in several public copies",
  },
  "iapws-r12-08": {
    title: "IAPWS R12-08, Formulation 2008 for the viscosity of ordinary water substance",
    seen: "quoted",
    what: "Coefficients through an open-source port, table 4 in several public copies",
  },
  "iapws-r1-76": {
    title: "IAPWS R1-76(2014), Surface tension of ordinary water substance",
    seen: "quoted",
    what: "Formula through an open-source port; release number from memory",
  },
  "iapws-r6-95": {
    title: "IAPWS R6-95, Formulation 1995 for the thermodynamic properties of ordinary water substance for general and scientific use",
    seen: "quoted",
    what: "A check value of table 7 in several public copies",
  },
  "iapws-r15-11": {
    title: "IAPWS R15-11, Formulation 2011 for the thermal conductivity of ordinary water substance",
    seen: "quoted",
    what: "A check value in several public copies",
  },
  "iso-13732-1": {
    title: "ISO 13732-1:2006, Ergonomics of the thermal environment: contact with surfaces, part 1: hot surfaces",
    seen: "quoted",
    what: "Scope in a catalogue; the burn thresholds from memory",
  },
  "rfc-8785": {
    title: "RFC 8785, JSON Canonicalization Scheme (JCS), 2020",
    seen: "quoted",
    what: "The sample object of 3.2, the sorting sample of 3.2.3 and the table of appendix B, in several public copies",
  },
  "rfc-9562": {
    title: "RFC 9562, Universally Unique IDentifiers (UUIDs), 2024",
    seen: "quoted",
    what: "The example of version 7 in appendix A.6, in several public copies; the layout of 5.7 from memory",
  },
  "fips-180-4": {
    title: "FIPS 180-4, Secure Hash Standard, 2015, with the examples that NIST publishes beside it",
    seen: "memory",
    what: "The example of SHA-256 for the message abc",
  },
} as const satisfies Record<string, Source>;
