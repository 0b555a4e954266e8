import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { found, refusalOf } from "../../testing/found.ts";
import { stressRatio } from "./index.ts";

against(
  {
    topic: "gland",
    check: "Radial over axial stress of solid PTFE from its Poisson's ratio",
    source: { source: "zappe-1999", at: "pp. 20-21" },
    tolerance: "printed as whole per cents",
  },
  (
    [
      ["23 °C", 0.46, 0.85],
      ["100 °C", 0.36, 0.56],
    ] as const
  ).map(([what, poissonRatio, theirs]) => ({
    what,
    theirs,
    ours: () => found(stressRatio({ poissonRatio })).ratio,
    unit: "1",
    within: { absolute: 0.005 },
  })),
);

test("a liquid passes its pressure on in full; nothing passes more", () => {
  expect(found(stressRatio({ poissonRatio: 0.5 })).ratio).toBe(1);
  expect(found(stressRatio({ poissonRatio: 0 })).ratio).toBe(0);
  for (const poissonRatio of [-0.1, 0.51, Number.NaN]) {
    expect(refusalOf(stressRatio({ poissonRatio }))).toMatchObject({ kind: "outside-range", input: "poissonRatio" });
  }
});
