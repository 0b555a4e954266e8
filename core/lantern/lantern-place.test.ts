import fc from "fast-check";
import { expect, test } from "vitest";
import { against } from "../../testing/against.ts";
import { property } from "../../testing/property.ts";
import { type Length, quantity } from "../units/index.ts";
import { type LanternPlace, lanternPlace, type PlaceQuestion } from "./lantern-place.ts";
import { lanternTrack } from "./lantern-track.ts";

const mm = (value: number) => quantity("length", value, "mm");

const drawn: PlaceQuestion = {
  rings: 5,
  ringHeight: mm(12.5),
  lanternWidth: mm(16),
  window: mm(12),
  portFromThroat: mm(31),
  portDiameter: mm(6),
  gapTravel: mm(12),
};

function placeOf(question: PlaceQuestion): LanternPlace {
  const answer = lanternPlace(question);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}

against(
  {
    topic: "lantern",
    check: "Rings below the lantern ring where the port sits as printed",
    source: { source: "fire-pump-manual", at: "p. 37: 6 rings, the lantern ring in place of the third from the bottom" },
    tolerance: "a count: exact. Section, widths and port are ours, the port in the middle of the third place",
  },
  [
    {
      what: "3/8 in section, lantern ring as wide as a ring",
      theirs: 2,
      ours: () =>
        placeOf({
          rings: 6,
          ringHeight: mm(9.5),
          lanternWidth: mm(9.5),
          window: mm(7),
          portFromThroat: mm(2.5 * 9.5 - 1),
          portDiameter: mm(4),
          gapTravel: mm(6),
        }).best,
      unit: "rings",
      within: { absolute: 0 },
    },
  ],
);

test("the drawn box wants two rings below, as practice has it (Mackay 2004, 6.2: 2 to 3)", () => {
  const found = placeOf(drawn);
  expect(found.best).toBe(2);
  expect(found.places).toHaveLength(6);
  expect(found.places[2]).toMatchObject({ openAtStart: true, openThroughout: true });
});

property(
  "no other count with a ring on the gland side keeps the port open longer, as the track of each one shows",
  [
    fc.integer({ min: 2, max: 9 }),
    fc.double({ min: 5, max: 20, noNaN: true }),
    fc.double({ min: 8, max: 40, noNaN: true }),
    fc.double({ min: 0, max: 150, noNaN: true }),
    fc.double({ min: 1, max: 30, noNaN: true }),
  ],
  (rings, height, width, port, travel) => {
    const question = {
      rings,
      ringHeight: mm(height),
      lanternWidth: mm(width),
      window: mm(0.8 * width),
      portFromThroat: mm(port),
      portDiameter: mm(0.3 * width),
      gapTravel: mm(travel),
    };
    const openFor = (below: number) => {
      const track = lanternTrack({ ...question, ringsThroatSide: below, ringsGlandSide: rings - below });
      if (!track.ok || track.value.atStart !== "open") return 0;
      return Math.min(question.gapTravel, track.value.opensUntil ?? Infinity);
    };
    const found = placeOf(question);
    const all = Array.from({ length: rings }, (_, below) => openFor(below));
    const longest = Math.max(...all);
    if (longest > 0) {
      expect(found.best).toBeLessThan(rings);
      expect(openFor(found.best)).toBeCloseTo(longest, 12);
    }
    for (const place of found.places.slice(0, rings)) expect(place.openFor).toBeCloseTo(openFor(place.ringsThroatSide), 12);
  },
);

test("a ring is kept on the gland side, even where the lantern ring would sit better without", () => {
  // The lantern ring's middle stands at 51 after five rings and at 43 after four; the window reaches 9 either way.
  const wide = {
    rings: 5,
    ringHeight: mm(8),
    lanternWidth: mm(22),
    window: mm(20),
    portFromThroat: mm(48),
    portDiameter: mm(2),
    gapTravel: mm(1),
  };
  const found = placeOf(wide);
  expect(found.places[4]).toMatchObject({ openThroughout: true });
  expect(found.places[5]).toMatchObject({ openThroughout: true });
  expect(Math.abs(found.places[5]?.offsetAtStart ?? 1)).toBeLessThan(Math.abs(found.places[4]?.offsetAtStart ?? 0));
  expect(found.best).toBe(4);
});

test("a port that no count brings under the window is said so, with the nearest count", () => {
  const answer = lanternPlace({ ...drawn, portFromThroat: mm(25.5) });
  expect(answer.ok && answer.value.best).toBe(1);
  expect(answer.ok && answer.warnings[0]).toMatchObject({ kind: "limit", input: "portFromThroat", says: { id: "lantern-no-place" } });
});

test("a travel longer than any place allows is said so", () => {
  const answer = lanternPlace({ ...drawn, gapTravel: mm(40) });
  expect(answer.ok && answer.warnings[0]).toMatchObject({ says: { id: "lantern-place-not-throughout" } });
});

test("no rings and sizes of nothing are refused by name", () => {
  for (const [name, value] of [
    ["rings", 0],
    ["rings", Number.NaN],
    ["ringHeight", 0],
    ["portFromThroat", -1],
    ["gapTravel", -1],
  ] as const) {
    expect(lanternPlace({ ...drawn, [name]: value as Length })).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input: name },
    });
  }
});
