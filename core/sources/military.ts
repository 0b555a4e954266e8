import type { Source } from "./source.ts";

/** Specifications, handbooks and manuals of armed forces and coast guards. */
export const military = {
  "us-army-tm-5-4210-233": {
    title: "US Army TM 5-4210-233-14&P-2, fire pump",
    seen: "read",
    what: "Page 6-39, paragraph 6-6, steps 20 to 27",
  },
  "us-army-tm-55-1905-223": {
    title: "US Army TM 55-1905-223-24-18-2, stern tube packing",
    seen: "read",
    what: "Part of the procedure; a unit lost in the copy",
  },
  "us-army-tm-10-4610-215": {
    title: "US Army TM 10-4610-215-10, water purification unit",
    seen: "read",
    what: "Page 225; subject of the manual from memory",
  },
  "mil-hdbk-1164": {
    title: "MIL-HDBK-1164, operation and maintenance of water supply systems",
    seen: "read",
    what: "Pages 77, 91, 95, 101 and 103",
  },
  "navfac-mo-209": {
    title: "NAVFAC MO-209, stuffing box, packing and alignment pages of its pump chapter",
    seen: "read",
    what: "Three pages; title from memory",
  },
  "navedtra-14113": {
    title: "NAVEDTRA 14113, US Navy training course, centrifugal pumps",
    seen: "read",
    what: "The stuffing box page with fig. 7-6",
  },
  "navedtra-14119": {
    title: "NAVEDTRA 14119, US Navy training course, valve repair",
    seen: "read",
    what: "One page with fig. 15-25; number as given by the copy's host",
  },
  "navy-packing-chart": {
    title: "US Navy training manual, packing and gasket chart: the four-digit symbol system",
    seen: "read",
    what: "One page; the symbol tables not seen",
  },
  "uscg-nvic-17-14": {
    title: "US Coast Guard NVIC 17-14, practical assessment tasks",
    seen: "quoted",
    what: "Task 9.1.B in a maritime academy's copy",
  },
  "mil-p-18472g": {
    title: "MIL-P-18472G(SH), naval centrifugal pumps",
    seen: "read",
    what: "One page, clause 3.3.9; title from memory",
  },
  "mil-p-18682d": {
    title: "MIL-P-18682D, naval centrifugal pumps",
    seen: "read",
    what: "One page; title from memory",
  },
  "mil-p-18526a": {
    title: "MIL-P-18526A, naval centrifugal pumps with mechanical seals",
    seen: "read",
    what: "One page; title from memory",
  },
  "mil-prf-24790a": {
    title: "MIL-PRF-24790A(SH), non-asbestos packing for rotary and reciprocating pumps",
    seen: "read",
    what: "Pages 10 and 13: appendix A.3.3 and 6.1; acceptance limits of table 3.5 not seen",
  },
  "mil-p-24396a": {
    title: "MIL-P-24396A(SH), packing material, braided PTFE, 1994",
    seen: "read",
    what: "Scope and types",
  },
  "mil-p-24503b": {
    title: "MIL-P-24503B(SH), packing material, graphitic, corrugated ribbon or textured tape and preformed ring, 1991",
    seen: "read",
    what: "Scope and classes",
  },
  "mil-p-24583b": {
    title: "MIL-P-24583B(SH), packing material, graphitic or carbon braided yarn, 1991",
    seen: "read",
    what: "Scope and classes",
  },
  "mil-p-17416c": {
    title: "MIL-P-17416C, packing material, metallic, flexible, symbol 1430, 1983",
    seen: "read",
    what: "Scope",
  },
  "mil-p-17578a": {
    title: "MIL-P-17578A(SHIPS), packing material, plastic, symbol 1425, 1967",
    seen: "read",
    what: "Scope: a door packing, no pump packing",
  },
  "mil-hdbk-189-1981": {
    title: "MIL-HDBK-189, Reliability growth management, 1981",
    seen: "quoted",
    what: "Appendix C example through a public test file",
  },
} as const satisfies Record<string, Source>;
