/** Sentences of this topic, by id. */
export const lanternSentences: Readonly<Record<string, string>> = {
  "lantern-window-wider-than-ring":
    "The window of the lantern ring, {window}, cannot be wider than the ring itself, {width}. The window is the width less both lands.",
  "lantern-no-rings": "There are no rings in this set, so nothing moves the lantern ring.",
  "lantern-bore-not-above-shaft": "The bore must be larger than the shaft.",
  "lantern-window-narrower-than-port": "The window of the lantern ring is narrower than the flush port: the port can never be wholly open.",
  "lantern-starts-towards-gland":
    "At finger-tight the flush port is {opening}: the lantern ring sits {offset} towards the gland from it. The port opens as the set is pulled up.",
  "lantern-starts-towards-throat":
    "At finger-tight the flush port is {opening}: the lantern ring sits {offset} towards the throat from it, and goes further that way as the set is pulled up.",
  "lantern-closes-within-travel":
    "The flush port begins to close after {movement} of gland movement, before the travel is used up; at the end of it the port is {opening}.",
  "lantern-travel-beyond-rings":
    "Using up this travel would take {percent} % of the height of the rings. Sets are known to lose up to 35 %: the gland will hardly get that far.",
  "lantern-does-not-move": "No rings lie between throat and lantern ring, so it stays where it is put.",
  "lantern-does-not-limit":
    "The flush port stays open until the flange meets the box, even at the careful end. The lantern ring sets no limit here.",
  "lantern-may-close-at-once":
    "With what is known here, the flush port may begin to close with the first push from {gap}. Measure port and lantern ring again, or move a ring to the throat side.",
  "lantern-repack": "Repack when a drill shank of {gap} no longer goes into the gland gap.",
  "lantern-repack-by-ring":
    "Repack when a drill shank of {gap} no longer goes into the gland gap. Past that, ring {ring} starts to close the flush port.",
  "lantern-no-place":
    "No count of rings brings the window over the flush port. Nearest is {rings} below the lantern ring, {offset} off. A spacer, or a lantern ring of another width, is needed.",
  "lantern-place-not-throughout":
    "No count of rings keeps the flush port open over the whole travel. {rings} below the lantern ring keep it open longest, for {movement} of gland movement.",
};

/** Names of this topic, where the id is not itself the word. */
export const lanternNames: Readonly<Record<string, string>> = {
  "part-closed": "part closed",
  ringsThroatSide: "rings between throat and lantern ring",
  ringsGlandSide: "rings between lantern ring and gland",
  ringHeight: "height of one seated ring",
  lanternWidth: "width of the lantern ring",
  window: "window of the lantern ring",
  portFromThroat: "throat to middle of the flush port",
  portFromFace: "box face to middle of the flush port",
  portDiameter: "diameter of the flush port",
  belowRings: "bush and spacer below ring 1",
  gapTravel: "travel of the gland",
  glandGap: "gland gap at finger-tight",
  frictionShaft: "friction on the shaft",
  frictionBore: "friction on the bore",
  ratio: "radial over axial stress",
  "gland-movement": "movement of the gland",
  "standard-uncertainty": "standard uncertainty",
  "coverage-factor": "coverage factor",
  "lantern-offset": "lantern ring from port, positive towards the gland",
  "lantern-offset-at-end": "lantern ring from port at the end of the travel",
  "lantern-open-reach": "how far off the port may be and still be open",
  "lantern-shut-reach": "how far off the port is shut",
  "lantern-share": "share of the gland's movement",
  "lantern-share-weighted": "share weighted by stress",
  "lantern-ring-decay": "loss of stress over one ring",
  "lantern-opens-from": "gland movement at which the port has opened",
  "lantern-opens-until": "gland movement at which the port begins to close",
  "lantern-opens-until-weighted": "the same, weighted by stress",
  "lantern-shut-at": "gland movement at which the port is shut",
  "lantern-careful-movement": "gland movement to count on",
  "gap-uncertainty": "standard uncertainty of the gap left",
  "lantern-careful-gap": "gland gap left when the port begins to close or shut, careful end",
  "lantern-late-gap": "gland gap left, late end",
  "lantern-gland-gap-uncertainty": "uncertainty of the gland gap",
  "lantern-repack-gap": "gland gap at which to repack",
  "lantern-open-for": "gland movement with the port open",
  "lantern-friction-turning": "friction along a turning shaft",
  "lantern-port-place-uncertainty": "uncertainty of the place of the port",
  "lantern-port-size-uncertainty": "uncertainty of the size of the port",
  "lantern-window-uncertainty": "uncertainty of the window",
  "lantern-width-uncertainty": "uncertainty of the width of the lantern ring",
  "lantern-ring-height-uncertainty": "uncertainty of the height of a seated ring, as a part of it",
  "lantern-share-uncertainty": "uncertainty of the share, as a part of it",
};
