import { quantity } from "@ringwright/core/units";
import type { LimitRuler } from "../index.ts";

const mm = (value: number) => quantity("length", value, "mm");
const inch = (value: number) => quantity("length", value, "in");

/** Runout of a 50 mm shaft: five limits that quarrel, the site's own, and a dial reading. */
export const runoutRuler: LimitRuler = {
  title: "runout",
  unit: "m",
  limits: [
    { value: mm(0.08), source: "ISO 9908" },
    { value: inch(0.002), source: "MIL-HDBK-1164" },
    { value: inch(0.002), source: "Mobley 1999" },
    { value: inch(0.003), source: "FIST 4-1A" },
    { value: inch(0.005), source: "axial-flow pump manual" },
    { value: inch(0.006), source: "MO-209" },
  ],
  house: { value: mm(0.075), setBy: "reliability engineer (invented)" },
  measured: { value: mm(0.06), standardUncertainty: mm(0.006) },
};

/** A hardness: a plain number, one limit, far from nought. */
export const hardnessRuler: LimitRuler = {
  title: "hardness of the sleeve",
  unit: "1",
  limits: [{ value: 250, source: "Neale 1995" }],
  measured: { value: 300, standardUncertainty: 8.7 },
};

/** A reading well past everything, with a limit that is shown beside. */
export const wornRuler: LimitRuler = {
  title: "throat clearance",
  unit: "m",
  limits: [
    { value: mm(0.5), source: "common practice" },
    { value: mm(0.35), source: "Lobanoff and Ross", beside: true },
  ],
  measured: { value: mm(1.4), standardUncertainty: mm(0.06) },
};
