/** Sentences of this topic, by id. */
export const stemsSentences: Readonly<Record<string, string>> = {
  "stem-load-not-known":
    "How hard the set is to be pressed is not known. Take the least stress and the multiple of pressure from its own sheet, or name the set.",
  "stem-under-pressure":
    "A stem under pressure can be driven out, and hot product with it. Never loosen a gland under pressure, and do not trust a backseat to hold it back. Local rules and licensed people decide.",
  "stud-over-proof": "The load is {share} % of what the stud is proved for. Stronger or more studs are needed, or a set that asks less.",
  "stud-may-pass-proof":
    "Torque scatters: at the most it may give, the stud carries {share} % of what it is proved for. Lubricate and know the nut factor, or fit stronger studs.",
  "stem-parts-unchecked": "Gland flange, eyebolts and pins are not checked here. On many valves they give before the studs do.",
  "stem-no-drip": "A valve stem is meant to be tight. There is no drip to set; prove it by the test that the rules ask for.",
  "stem-may-stick":
    "Packing friction can stop a stem from moving. Stroke the valve after every tightening and compare with what its actuator can do.",
  "rod-bore-not-larger": "A bore of {bore} does not go round a rod of {rod}. Measure both again, or look whether they were swapped.",
  "rod-too-thin":
    "The rod is {worn} below its size; the printed limit is {limit}. Build it up, renew it, or fit packing made for its size.",
  "plunger-limit-one-pump": "The limit comes from the parts note of one sludge pump. The maker of this pump may allow less.",
  "rod-set-tall":
    "The set is {sections} sections tall; {high} is the usual most. More rings are not longer life: a salt-water plunger packed with 12 rings lasted two weeks.",
  "rod-set-low": "The set is {sections} sections tall; {low} is the usual least.",
  "rod-set-over-stroke":
    "Without a lubricator the set should not be taller than the stroke: a stretch of rod would never leave it and run dry.",
};

/** Names of this topic, where the id is not itself the word. */
export const stemsNames: Readonly<Record<string, string>> = {
  floorStress: "least gland stress",
  timesPressure: "multiple of the pressure",
  rodSmallest: "smallest diameter of the rod",
  lanternHeight: "height of the lantern ring",
  stem: "stem diameter",
  "stem-floor-stress": "least gland stress of the set",
  "stem-times-pressure": "multiple of the pressure for the set",
  "stem-friction": "stem friction, stress the same all along",
  "stem-friction-decayed": "stem friction, stress falling along the box",
  "stem-rejection-load": "force of pressure on the stem",
  "stud-use": "share of the proof load used",
  "share-of-load-left": "share of the load left after 100 strokes",
  "load-left-low": "least gland stress left after 100 strokes",
  "load-left-high": "most gland stress left after 100 strokes",
  "packed-length": "height of all rings",
  friction: "friction of packing on stem",
  rod: "rod size when new",
  "rod-smallest": "smallest diameter of the rod",
  "rod-stack-height": "height of the set",
  "stack-in-sections": "height of the set in sections",
  "stack-over-stroke": "height of the set over the stroke",
  "rod-friction": "force to slide the rod",
  "friction-running": "friction on the moving rod",
  "rod-undersize": "wear of the rod below its size",
  "gas-rod-undersize-limit": "most wear of a gas rod",
  "plunger-undersize-limit": "most wear of a plunger",
  "undersize-per-diameter": "wear allowed for each unit of diameter",
  "undersize-at-high-pressure": "most wear at this pressure",
  "rod-box-warmth": "how much warmer than the liquid the box may be",
  "lantern-height": "height of the lantern ring",
  divisor: "compared with",
};
