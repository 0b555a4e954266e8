/** Sentences of this topic, by id. */
export const heatSentences: Readonly<Record<string, string>> = {
  "heat-bore-not-larger": "The bore must be larger than the shaft, {shaft}. Measure both again, or look whether they were swapped.",
  "torque-is-coulomb":
    "The torque is that of dry rubbing (Coulomb), the upper bound. Packing measured on test rigs took much less; the true power lies in the band.",
  "not-turning": "At standstill there is no friction power; the torque is that of a shaft that just turns.",
  "no-film-bound":
    "Without {input} the power of a full liquid film is not known. The band starts at the friction of a well wetted shaft. Work out the clearance from the drip to get the film bound.",
  "film-not-thin": "The clearance is wide for a film on this shaft: the film power is a rough guide only.",
  "film-above-coulomb":
    "The film would take more power than dry rubbing. Clearance, viscosity or gland stress do not fit together: look at them again.",
  "box-material-unknown": "What the box is made of is not one of the kinds known here.",
  "graphite-grows-at-most": "Flexible graphite grows across its layers only, and hardly along them. This is the most it can grow.",
  "ptfe-tightens-itself":
    "PTFE grows when it warms and tightens the gland by itself. Look at drip and temperature again once warm; it may need slackening, before it runs hot and not after.",
  "no-pressure-speed-limit":
    "For information. No limit for pressure times speed with a source behind it was found: judge by speed and by temperature.",
};

/** Names of this topic, where the id is not itself the word. */
export const heatNames: Readonly<Record<string, string>> = {
  packedLength: "packed length",
  glandStress: "gland stress",
  frictionBore: "friction on the bore",
  frictionRunning: "friction on the turning shaft",
  ratio: "radial over axial stress",
  "running-decay": "decay of stress along the box while turning",
  "coulomb-drag": "friction force on the shaft (Coulomb)",
  "coulomb-torque": "torque on the shaft (Coulomb)",
  "coulomb-power": "friction power (Coulomb)",
  "coulomb-power-lowest": "friction power of a well wetted shaft",
  "coulomb-power-highest": "highest friction power (Coulomb)",
  "film-power": "friction power of a full film",
  "packing-strain": "growth of the packing, as a share",
  "box-strain": "growth of the box, as a share",
  "packing-volume-strain": "growth of the packing in volume, as a share",
  "growth-free": "growth along the shaft, free to grow sideways",
  "growth-confined": "growth along the shaft, held by shaft and bore",
  "growth-free-flats": "that growth in flats of the nuts, free",
  "growth-confined-flats": "that growth in flats of the nuts, held",
  poisson: "Poisson's ratio",
  boxMaterial: "expansion of the box",
  "pressure-speed": "pressure times speed",
  boxPressureGauge: "box pressure",
};
