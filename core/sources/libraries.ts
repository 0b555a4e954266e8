import type { Source } from "./source.ts";

/** General reference libraries that made expected values for the tests. */
export const libraries = {
  "r-survival": {
    title: "R 4.2.2 with survival 3.5-3, general statistics library",
    seen: "read",
    what: "Run for reference values of life data",
  },
  "r-npsurv": {
    title: "R package npsurv 0.5-0, non-parametric survival library",
    seen: "read",
    what: "Run for interval-censored reference values",
  },
  "r-stats": {
    title: "R 4.2.2 stats, general statistics library",
    seen: "read",
    what: "Run for state-space reference values",
  },
  "r-strucchange": {
    title: "R package strucchange 1.5-3, structural change library",
    seen: "read",
    what: "Run for change points; its documentation names the break of 1898",
  },
  "python-mpmath": {
    title: "mpmath 1.2.1, arbitrary-precision arithmetic library",
    seen: "read",
    what: "Run for 40-digit reference values",
  },
  "python-scipy": {
    title: "SciPy 1.10.1, general numerical library",
    seen: "read",
    what: "Run for reference values of integrals, fits and differential equations",
  },
  "python-numpy": {
    title: "NumPy 1.24.2, general numerical library",
    seen: "read",
    what: "Run for reference values",
  },
  "python-statsmodels": {
    title: "statsmodels 0.13.5, general statistics library",
    seen: "read",
    what: "Run as a second route for time series",
  },
  "python-iapws": {
    title: "iapws 1.5.3, open implementation of the IAPWS releases",
    seen: "read",
    what: "Run for reference values and read for constants",
  },
  "opm-material": {
    title: "OPM material 2022.10, open library of fluid properties for flow in porous media",
    seen: "read",
    what: "Read for a second copy of the water constants",
  },
  freesteam: {
    title: "freesteam, open steam table library",
    seen: "read",
    what: "Read for a second copy of the boundary of regions 2 and 3 and of the surface tension",
  },
  "python-uncertainties": {
    title: "uncertainties 3.1.6, error propagation library",
    seen: "read",
    what: "Run for reference values",
  },
  "python-pint": {
    title: "Pint 0.19.2, units library",
    seen: "read",
    what: "Run for reference conversions",
  },
  "gnu-units": {
    title: "GNU Units 2.22, unit conversion program",
    seen: "read",
    what: "Run for reference conversions",
  },
  highs: {
    title: "HiGHS 1.15.3, linear and integer programming library",
    seen: "read",
    what: "Run for cutting optima",
  },
  glpk: {
    title: "GLPK 5.0, linear and integer programming library",
    seen: "read",
    what: "Run for cutting optima",
  },
  "coin-or-cbc": {
    title: "COIN-OR CBC 2.10.8, integer programming library",
    seen: "read",
    what: "Run for cutting optima",
  },
  bayesjs: {
    title: "bayesjs 0.6.5, Bayesian network library",
    seen: "read",
    what: "Run as a second route",
  },
} as const satisfies Record<string, Source>;
