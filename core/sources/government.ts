import type { Source } from "./source.ts";

/** Laws, rules and publications of civil authorities. */
export const government = {
  "usbr-fist-4-1a": {
    title: "US Bureau of Reclamation, FIST 4-1A, Maintenance Scheduling for Mechanical Equipment",
    seen: "read",
    what: "Section 2.5, p. 14, and item 17 of the checklist, p. 42",
  },
  "usbr-fist-2-7": {
    title: "US Bureau of Reclamation, FIST 2-7, Mechanical Overhaul Procedures",
    seen: "read",
    what: "Section 6.4, p. 26; number from memory",
  },
  "colorado-mine-permit": {
    title: "State of Colorado, mine permit file with a vertical pump specification",
    seen: "read",
    what: "One page",
  },
  "epa-453-r-95-017": {
    title: "US EPA, Protocol for Equipment Leak Emission Estimates, EPA-453/R-95-017, 1995",
    seen: "quoted",
    what: "Cover and foreword; correlations and default zeros through the Quebec regulation; tables, pegged rates and worked examples not seen",
  },
  "quebec-q-2-r-4-1": {
    title: "Quebec, Clean Air Regulation, Q-2, r. 4.1",
    seen: "read",
    what: "Schedule E, tables I and II",
  },
  "epa-natural-gas-star": {
    title: "US EPA, Natural Gas STAR, lessons learned on rod packing",
    seen: "read",
    what: "Leak rates of rod packing; the economic formula not seen",
  },
  "epa-ldar-guide": {
    title: "US EPA, Leak detection and repair: a best practices guide",
    seen: "read",
    what: "Pamphlet, excerpt",
  },
  "epa-method-21": {
    title: "US EPA, Method 21, Determination of volatile organic compound leaks",
    seen: "memory",
    what: "Not opened",
  },
  "epa-asbestos-1988": {
    title: "ICF for US EPA, asbestos regulatory impact analysis, 1988",
    seen: "read",
    what: "Class list of substitute fibres in the packing chapter; property table not seen",
  },
  "us-40-cfr-260s": {
    title: "US 40 CFR parts 261, 264 and 265, subpart BB, equipment leaks",
    seen: "quoted",
    what: "Sections 1052, 1057, 1058 and 1059 through state codes and a compliance site, text of 2003",
  },
  "us-40-cfr-60": {
    title: "US 40 CFR part 60, new source performance standards",
    seen: "quoted",
    what: "Excerpts of 60.483-2, 60.5385 and 60.5393c",
  },
  "us-40-cfr-63": {
    title: "US 40 CFR part 63, national emission standards for hazardous air pollutants",
    seen: "quoted",
    what: "Excerpt of 63.1026",
  },
  "us-40-cfr-65": {
    title: "US 40 CFR part 65, consolidated federal air rule",
    seen: "quoted",
    what: "Excerpts of 65.107 and 65.109",
  },
  "wisconsin-nr-440": {
    title: "Wisconsin Administrative Code, NR 440.62(3)(g)",
    seen: "quoted",
    what: "Excerpt",
  },
  "eur-19772": {
    title: "European Commission, EUR 19772 EN, report on valve stem leaks, 2000",
    seen: "read",
    what: "Introduction; title from memory",
  },
  "eu-2024-368": {
    title: "Commission Implementing Decision (EU) 2024/368, materials in contact with drinking water",
    seen: "quoted",
    what: "Excerpt of annex I: risk groups and conversion factors",
  },
  "eu-2020-2184": {
    title: "Directive (EU) 2020/2184, quality of water intended for human consumption",
    seen: "memory",
    what: "Not opened; article 11 from memory",
  },
  "eu-1935-2004": {
    title: "Regulation (EC) 1935/2004, materials intended to come into contact with food",
    seen: "quoted",
    what: "Through secondary pages",
  },
  "echa-positive-list": {
    title: "ECHA, European positive lists for drinking water materials",
    seen: "quoted",
    what: "Expiry dates through notes of the agency and of a sealing association",
  },
  "us-21-cfr-177-1550": {
    title: "US 21 CFR 177.1550, perfluorocarbon resins",
    seen: "quoted",
    what: "Named in a trade association article; text of the rule not read",
  },
  "us-safe-drinking-water-act": {
    title: "US Safe Drinking Water Act, definition of lead free, in force January 2014",
    seen: "quoted",
    what: "Through a secondary page",
  },
  "osha-29-cfr-1910-147": {
    title: "US 29 CFR 1910.147, control of hazardous energy (lockout/tagout)",
    seen: "quoted",
    what: "Text of 2002, the steps of (d) and (a)(2) through training copies",
  },
  "osha-29-cfr-1910-1001": {
    title: "US 29 CFR 1910.1001, asbestos in general industry",
    seen: "memory",
    what: "Not opened; its preamble of 10 August 1994 through excerpts",
  },
  "osha-asbestos-1994": {
    title: "US OSHA, asbestos rule of 10 August 1994, with a negative exposure assessment form",
    seen: "quoted",
    what: "Excerpts",
  },
  "osha-letter-2011-11-10": {
    title: "US OSHA, letter of interpretation of 10 November 2011 on negative exposure assessment",
    seen: "read",
    what: "Letter, excerpt",
  },
  "worksafebc-2020172120011": {
    title: "WorkSafeBC, incident summary 2020172120011",
    seen: "read",
    what: "Summary",
  },
  "cdc-mmwr-00051631": {
    title: "US CDC, Morbidity and Mortality Weekly Report, item 00051631, polymer fume fever",
    seen: "read",
    what: "Report, excerpt",
  },
  "nlm-haz-map": {
    title: "US National Library of Medicine, Haz-Map, polymer fume fever",
    seen: "read",
    what: "Entry",
  },
  "nrc-in-82-10": {
    title: "US NRC, Information Notice 82-10",
    seen: "read",
    what: "Text, excerpt",
  },
  "nrc-in-87-40": {
    title: "US NRC, Information Notice 87-40, backseating valves",
    seen: "read",
    what: "Text, excerpt",
  },
  "nrc-in-88-94": {
    title: "US NRC, Information Notice 88-94",
    seen: "read",
    what: "Text, excerpt",
  },
  "nrc-in-92-41": {
    title: "US NRC, Information Notice 92-41, stem rejection load",
    seen: "read",
    what: "Statement that the load exists",
  },
  "doe-steam-leaks": {
    title: "US Department of Energy, tip sheet on steam leaks",
    seen: "read",
    what: "Table of plume length and cost",
  },
  "nist-sp-811": {
    title: "NIST Special Publication 811, Guide for the Use of the International System of Units",
    seen: "memory",
    what: "Appendix B could not be opened; the factors are exact by definition",
  },
  "nist-sematech-handbook": {
    title: "NIST/SEMATECH e-Handbook of Statistical Methods",
    seen: "read",
    what: "Section 8.4.1.3; data of its control chart from memory, its repair example through a public test file",
  },
  "nasa-tm-103511": {
    title: "NASA TM-103511, reliability growth example",
    seen: "quoted",
    what: "Printed MTBF and its 80 % factors; title from memory",
  },
} as const satisfies Record<string, Source>;
