import { expect, test } from "vitest";
import copy from "../../data/tables/water-constants.json" with { type: "json" };
import { liquidTerms } from "./liquid-water.ts";
import { boundaryTerms } from "./regions.ts";
import { saturationTerms } from "./saturation.ts";
import { idealSteamTerms, steamTerms } from "./steam.ts";
import { tensionTerms } from "./surface-tension.ts";
import { denseTerms, diluteTerms } from "./viscosity.ts";

// Ours were read from one open implementation, the table holds another's (see its origin). Up to 14 digits a double
// tells any two decimals apart, so equal numbers are equal digits.
const transpose = (rows: readonly (readonly number[])[]) => rows[0]?.map((_, column) => rows.map((row) => row[column]));

test("every constant for liquid water is, to the last digit, the one in a second copy of the release", () => {
  expect(liquidTerms.rows).toHaveLength(34);
  expect(transpose(liquidTerms.rows)).toEqual([copy.region1.I, copy.region1.J, copy.region1.n]);
});

test("every constant for steam is, to the last digit, the one in a second copy of the release", () => {
  expect(steamTerms.rows).toHaveLength(43);
  expect(transpose(steamTerms.rows)).toEqual([copy.region2.residual.I, copy.region2.residual.J, copy.region2.residual.n]);
  expect(transpose(idealSteamTerms)).toEqual([copy.region2.ideal.J, copy.region2.ideal.n]);
  expect(boundaryTerms).toEqual(copy.region23.n);
});

test("every constant of boiling is, to the last digit, the one in a second copy of the release", () => {
  expect(saturationTerms).toEqual(copy.region4.n);
});

test("the fifth constant of boiling is not the misprint in circulation, which has 3233 for 3223", () => {
  expect(saturationTerms[4]).toBe(-3232555.0322333);
  expect(saturationTerms[4]).not.toBe(-3232555.0323333);
});

test("every constant of viscosity and surface tension is, to the last digit, the one in a second copy of the release", () => {
  expect(diluteTerms).toEqual(copy.viscosity.H);
  expect(denseTerms).toEqual(copy.viscosity.byTemperaturePowerThenDensityPower);
  expect(tensionTerms).toEqual({ scale: copy.surfaceTension.B, exponent: copy.surfaceTension.mu, slope: copy.surfaceTension.b });
});
