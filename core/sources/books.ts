import type { Source } from "./source.ts";

/** Books and handbooks. */
export const books = {
  "neale-1995": {
    title: "M. J. Neale (ed.), The Tribology Handbook, 2nd ed., Butterworth-Heinemann, 1995",
    seen: "read",
    what: "Pages B25.3 and B25.4: tables 25.1 and 25.2, text, caption of fig. 25.11; B25.1 and B25.2 not available",
  },
  "mobley-1999": {
    title: "R. K. Mobley, Root Cause Failure Analysis, Newnes, 1999",
    seen: "read",
    what: "Pages of chapter 18 (223 to 234) and p. 282",
  },
  "bloch-geitner-maintenance": {
    title:
      "H. P. Bloch and F. K. Geitner, Practical Machinery Management for Process Plants: Major Process Equipment Maintenance and Repair, Gulf",
    seen: "read",
    what: "Pages 86, 127, 129 and 212; edition not noted",
  },
  "bloch-geitner-component": {
    title:
      "H. P. Bloch and F. K. Geitner, Practical Machinery Management for Process Plants: Machinery Component Maintenance and Repair, Gulf",
    seen: "read",
    what: "Chapter 5, p. 203 and fig. 5-21, from a scan; edition not noted",
  },
  "lobanoff-ross": {
    title: "V. S. Lobanoff and R. R. Ross, Centrifugal Pumps: Design and Application, Gulf",
    seen: "read",
    what: "Pages 237 and 238, without the chart of fig. 13-6; edition not noted",
  },
  "zappe-1999": {
    title: "R. W. Zappe, Valve Selection Handbook, 4th ed., Gulf, 1999",
    seen: "read",
    what: "Pages 20 and 21",
  },
  "mackay-2004": {
    title: "R. Mackay, The Practical Pumping Handbook, Elsevier, 2004",
    seen: "read",
    what: "Sections 6.1, 6.2 (pages 87 and 88) and 12.9.1.2",
  },
  "pump-handbook-2001": {
    title: "I. J. Karassik, J. P. Messina, P. Cooper and C. C. Heald (eds.), Pump Handbook, 3rd ed., McGraw-Hill, 2001",
    seen: "read",
    what: "Top of p. 2.192 and the materials paragraph of s. 2.2.2; the troubles table, slip and breakdown bush through web reprints; table 6 and the limits of metallic packing not seen",
  },
  "pope-rules-of-thumb": {
    title: "J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf, 1997",
    seen: "read",
    what: "Text of p. 82 with its equations lost in the copy; editor and year from memory",
  },
  "hawkins-pumps": {
    title: "N. Hawkins, Pumps and Hydraulics, part 2, early 1900s",
    seen: "read",
    what: "Page 372 and following",
  },
  "swedish-pump-handbook": {
    title: "Pumphandboken, handbook of the Swedish pump trade (English edition: Pumpbook)",
    seen: "read",
    what: "Text of section 5.2; the survey of operating limits in fig. 5.2a not seen",
  },
  "bachus-custodio-2003": {
    title: "L. Bachus and A. Custodio, Know and Understand Centrifugal Pumps, Elsevier, 2003",
    seen: "read",
    what: "Lubricant text and fibre list of chapter 12, pages 175 to 178",
  },
  "borden-1998": {
    title: "G. Borden (ed.), Control Valves, ISA, 1998",
    seen: "quoted",
    what: "Excerpt of chapters 10 to 12 on an engineering reference page; editor and year from memory",
  },
  "ebnesajjad-2017": {
    title: "S. Ebnesajjad, Expanded PTFE Applications Handbook, William Andrew, 2017",
    seen: "read",
    what: "Table 7.2 on p. 166, scrambled in the copy: density column readable, expansion column ambiguous",
  },
  "martienssen-warlimont-2005": {
    title: "W. Martienssen and H. Warlimont (eds.), Springer Handbook of Condensed Matter and Materials Data, Springer, 2005",
    seen: "read",
    what: "Table 3.3-13 (ten values over eleven column heads); year from memory",
  },
  "nippon-marine-diesel-2000": {
    title: "Text on marine diesel engines, Nippon Foundation library, 2000/00107, in Japanese",
    seen: "read",
    what: "Section 206",
  },
  "white-viscous-fluid-flow": {
    title: "F. M. White, Viscous Fluid Flow, McGraw-Hill",
    seen: "memory",
    what: "Not opened; formula recomputed two ways",
  },
  "shah-london-1978": {
    title: "R. K. Shah and A. L. London, Laminar Flow Forced Convection in Ducts, Academic Press, 1978",
    seen: "memory",
    what: "Not opened; friction factors recomputed",
  },
  "barlow-proschan-1965": {
    title: "R. E. Barlow and F. Proschan, Mathematical Theory of Reliability, Wiley, 1965",
    seen: "memory",
    what: "Not opened",
  },
  "nelson-1982": {
    title: "W. Nelson, Applied Life Data Analysis, Wiley, 1982",
    seen: "quoted",
    what: "Data through a public statistics package",
  },
  "nelson-1995": {
    title: "W. Nelson, Confidence Limits for Recurrence Data Applied to Cost or Number of Product Repairs, Technometrics 37, 1995",
    seen: "quoted",
    what: "Data through a public statistics package; title from memory",
  },
  "meeker-escobar-1998": {
    title: "W. Q. Meeker and L. A. Escobar, Statistical Methods for Reliability Data, Wiley, 1998",
    seen: "quoted",
    what: "Data through a public statistics package",
  },
  "miller-1997": {
    title: "R. G. Miller, Survival Analysis, Wiley, 1997",
    seen: "quoted",
    what: "Data through a public statistics package",
  },
  "durbin-koopman": {
    title: "J. Durbin and S. J. Koopman, Time Series Analysis by State Space Methods, Oxford University Press",
    seen: "quoted",
    what: "Two variances of the Nile example through a tutorial; edition not noted",
  },
  "chvatal-1983": {
    title: "V. Chvatal, Linear Programming, Freeman, 1983",
    seen: "memory",
    what: "Not opened; source and optimum of the chapter 13 example from memory, its data through a public model library",
  },
} as const satisfies Record<string, Source>;
