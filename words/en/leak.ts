/** Sentences of this topic, by id. */
export const leakSentences: Readonly<Record<string, string>> = {
  "leak-not-laminar":
    "The Reynolds number in the gap is {reynolds}, above {limit}: the flow there is no longer smooth, and through such a gap less would really leak than this formula says.",
  "leak-gap-not-thin":
    "The clearance is wide for this shaft: through such a gap about {percent} % more would really leak than this formula says.",
  "leak-round-outside":
    "It comes round the outside of the rings, not along the shaft, so it says nothing about the gap at the shaft. Look at section, bore and how the rings sit.",
  "leak-under-sleeve":
    "It comes from under the sleeve. The gland cannot stop that, and it says nothing about the packing. Look at the sleeve's seal.",
  "leak-spray":
    "A spray cannot be counted or turned into a clearance. Stand clear, keep others away, and have the operator stop the machine before anyone comes near.",
  "leak-place-not-said": "Where it comes out was not said. This holds only for a leak along the shaft.",
  "leak-state-not-said": "Whether the shaft was running was not said. Keep this clearance for readings of the same kind.",
  "leak-running-only": "This clearance is for a running shaft. It says nothing about the leak at rest.",
  "leak-standing-only": "This clearance is for a shaft at rest. It says nothing about the leak when running.",
  "leak-flush-not-said":
    "Whether the flush was on was not said. With it on, only the gland-side rings and the drop from flush pressure to the outside count.",
  "leak-flush-on":
    "The flush was on: what came out is flush. The length is that of the gland-side rings, the drop is from flush pressure to the outside.",
  "leak-flush-off": "The flush was off: the length is that of all rings, the drop is from the bottom of the box to the outside.",
  "leak-states-do-not-mix": "The leak was read with the shaft {observed}. It cannot tell what it would be {asked}: count it then.",
  "leak-viscosity-then-needed": "For a liquid other than water its viscosity at the new temperature is needed too.",
  "leak-water-not-liquid":
    "At this temperature and pressure water is not liquid in the box, so the leak cannot be worked out as one of water.",
  "leak-flashes":
    "Water at {temperature} turns to steam on its way out, which this formula does not know. Scald danger: stand clear of it.",
  "leak-clearance-kept":
    "The clearance was kept as it was. Packing that warms up, wears or is pushed changes it, and no one has published what a flat of the nut does to a leak.",
  "drop-volume-not-measured":
    "The size of a drop was not measured: 0.05 mL was taken, and it may be 0.03 to 0.25 mL. Catch a minute's leak in a measure and count to settle it.",
  "drops-run-together":
    "Above {limit} a minute drops run together and the count is no longer sure. Catch the leak in a measure against the clock.",
  "drop-count-short": "Fewer than {least} drops were counted. Count longer for a better figure.",
  "drop-volume-unlikely": "A drop of {volume} would be unusual. Was the whole leak caught, and every drop counted?",
  "drop-volume-estimated": "Estimated from the edge that the drops hang from. A count with a catch is better.",
  "drop-catch-incomplete": "A catch needs both: how many drops, and how much they came to.",
  "drip-never-for-stems": "A valve stem has no drip to set. Its packing is there to be tight.",
  "drip-of-product-not-allowed":
    "Product may not be let out here, so it cannot be what drips. Either clean flush drips to a closed drain, or grease does the work, or packing is not for this box.",
  "drip-none-published":
    "No drip was found published for a shaft that moves like this, at this stage. Set a house limit, and go by temperature.",
  "drip-lubricates-first":
    "The drip is there to keep the packing wet first. How much heat it takes away nobody knows well: watch the temperature of the box against that of the product.",
  "drip-service-not-said": "The service was not said, so the general figures are shown.",
  "drip-release-not-said": "Whether what drips may be let out here was not said. Find out before leaving any drip.",
  "drip-flush-to-closed-drain":
    "Only clean flush may drip here, and to a closed drain. Flush pressure has to stay above box pressure all the time.",
  "drip-never-toward-zero":
    "On a turning shaft never tighten in order to stop the drip. Small even steps, wait, look at drip and temperature, and leave it when both hold steady.",
  "drip-zero-burns": "No drip with this packing means that it runs dry and burns, and scores the sleeve. A dry gland is no good gland.",
  "drip-zero-graphite":
    "Flexible graphite may come down to no drip and stay well. Then temperature judges: steady is in order, rising means stop and let it cool.",
  "drip-zero-grease": "Where grease keeps the packing wet, no drip can be in order. Then temperature and the grease feed judge.",
  "drip-zero-vacuum":
    "With the box below the atmosphere nothing drips by itself; air goes in instead. Flush has to keep the packing wet, and temperature judges.",
};

/** Names of this topic, where the id is not itself the word. */
export const leakNames: Readonly<Record<string, string>> = {
  "drop-flush-to-atmosphere": "pressure drop, flush to atmosphere",
  "drop-box-to-atmosphere": "pressure drop, bottom of the box to atmosphere",
  "length-gland-side-rings": "length of the gland-side rings",
  "length-all-rings": "length of all rings",
  "equivalent-clearance-low": "equivalent clearance, low end",
  "equivalent-clearance-high": "equivalent clearance, high end",
  "gap-reynolds": "Reynolds number in the gap",
  "thin-gap-shortfall": "share by which the thin-gap formula is low",
  "drops-as-flow": "leak",
  "drops-as-flow-low": "leak, low end",
  "drops-as-flow-high": "leak, high end",
  "flow-as-drops": "drops a minute",
  "flow-as-drops-low": "drops a minute, low end",
  "flow-as-drops-high": "drops a minute, high end",
  "drop-rate": "drops a minute",
  "drop-volume-low": "drop volume, low end",
  "drop-volume-high": "drop volume, high end",
  "drip-tip": "width of the edge it drips from",
  "drip-guideline-low": "published drip, low end",
  "drip-guideline-high": "published drip, high end",
  "drip-guideline-flow-low": "published drip as a flow, low end",
  "drip-guideline-flow-high": "published drip as a flow, high end",
  "per-shaft": "shaft that the figure is given for",
  "leak-then": "leak then",
  "constant-drip": "a constant drip",
  trickle: "a trickle",
  "generous-then-small-steps": "generous at the start, then closed in by small steps",
  "steady-drip-to-thin-stream": "a steady drip up to a thin unbroken stream",
};
