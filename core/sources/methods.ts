import type { Source } from "./source.ts";

/** Papers on statistics, geometry, flow and optimisation whose data or printed results the tests use. */
export const methods = {
  "piercy-hooper-winny-1933": {
    title: "N. A. V. Piercy, M. S. Hooper and H. F. Winny, Viscous Flow through Pipes with Cores, Philosophical Magazine 15, 1933",
    seen: "memory",
    what: "Not opened; series recomputed and matched by an independent collocation",
  },
  "tate-1864": {
    title: "T. Tate, On the Magnitude of a Drop of Liquid Formed under Different Circumstances, Philosophical Magazine 27, 1864",
    seen: "memory",
    what: "Not opened; the law from memory",
  },
  "eschbaum-1895": {
    title: "F. Eschbaum, Size and Weight of Drops of Medicines, as reported in Bulletin of Pharmacy 9, 461-462, October 1895",
    seen: "quoted",
    what: "Table of pipette width against weight of a drop of water, in a transcript; two of its eight rows are misprinted there",
  },
  "lieblein-zelen-1956": {
    title:
      "J. Lieblein and M. Zelen, Statistical Investigation of the Fatigue Life of Deep-Groove Ball Bearings, NBS J. of Research 57, 273-316, 1956",
    seen: "quoted",
    what: "Data as in several public copies",
  },
  "smith-naylor-1987": {
    title:
      "R. L. Smith and J. C. Naylor, comparison of estimators for the three-parameter Weibull distribution, Applied Statistics 36, 1987",
    seen: "quoted",
    what: "The 63 glass fibre strengths in public copies",
  },
  "mcgilchrist-aisbett-1991": {
    title: "C. A. McGilchrist and C. W. Aisbett, Regression with Frailty in Survival Analysis, Biometrics 47, 1991",
    seen: "quoted",
    what: "Data through a public statistics package",
  },
  "nelson-doganaksoy-1989": {
    title: "W. Nelson and N. Doganaksoy, report on repair data of valve seats, 1989",
    seen: "quoted",
    what: "Data through a public statistics package; title not noted",
  },
  "barlow-hunter-1960": {
    title: "R. Barlow and L. Hunter, Optimum Preventive Maintenance Policies, Operations Research 8, 1960",
    seen: "memory",
    what: "Not opened",
  },
  "delorme-2018": {
    title:
      "M. Delorme, M. Iori and S. Martello, BPPLIB: a Library for Bin Packing and Cutting Stock Problems, Optimization Letters 12, 235, 2018",
    seen: "quoted",
    what: "Instances and optima in public repositories; the text not read",
  },
  "gander-golub-strebel-1994": {
    title: "W. Gander, G. H. Golub and R. Strebel, Least-Squares Fitting of Circles and Ellipses, BIT 34, 558-578, 1994",
    seen: "memory",
    what: "Printed figures from memory; recomputed to the same digits",
  },
  "shakarji-1998": {
    title: "C. M. Shakarji, Least-Squares Fitting Algorithms of the NIST Algorithm Testing System, NIST J. of Research 103, 633, 1998",
    seen: "memory",
    what: "Named only; its data could not be had",
  },
  "lauritzen-spiegelhalter-1988": {
    title:
      "S. L. Lauritzen and D. J. Spiegelhalter, Local Computations with Probabilities on Graphical Structures, J. Royal Statistical Society B 50, 1988",
    seen: "quoted",
    what: "Probability tables of the chest clinic example in public copies",
  },
} as const satisfies Record<string, Source>;
