/** Sentences of this topic, by id. */
export const ringsSentences: Readonly<Record<string, string>> = {
  "rings-loss-other-end": "Give both ends of the range for what a ring loses in seating, or neither.",
  "rings-loss-wrong-way": "The most that a ring loses in seating cannot be less than the least.",
  "rings-no-counts": "No ring counts are known for this motion.",
  "rings-none-fit": "Not one ring of {height} goes into this box with the follower entering. Check depth and section.",
  "rings-none-fit-with-lantern":
    "Not one ring of {height} goes in beside a lantern ring of {lantern} with the follower entering. Check depth, section and lantern ring.",
  "rings-too-many": "{rings} rings do not go into this box; {most} at most, and then the follower does not enter.",
  "rings-below-more-than-all": "There are only {rings} rings in the set.",
  "rings-lands-fill-lantern": "Two lands of {land} leave no window in a lantern ring of {width}.",
  "rings-port-outside-box": "The flush port cannot lie outside the box, which is {depth} deep.",
  "rings-port-two-places": "From the throat the port is at {throat}, but from the face it comes out at {face}. Measure it again.",
  "rings-too-shallow": "The box is too shallow: {rings} rings go in where practice wants at least {fewest}.",
  "rings-too-shallow-with-lantern":
    "The box is too shallow for a lantern ring and {fewest} rings: {rings} go in with it, {without} without it.",
  "rings-fewer-than-usual": "{rings} rings are fewer than the {fewest} that practice wants.",
  "rings-more-than-usual": "{rings} rings are more than the {most} of practice. Little of a push reaches the inner ones.",
  "rings-spacer":
    "The box is deeper than the set: {fit} rings would go in, {rings} are enough. A spacer of {spacer} goes in first, at the throat; it must not touch the shaft.",
  "rings-one-more": "If more than {left} is left above ring {rings} once it is home, ring {next} goes in too.",
  "rings-no-entry":
    "The follower enters by {entry} only (down to {low}); at least {least} is wanted, else it does not guide. Take a ring out or shorten the set.",
  "rings-little-entry": "The follower may enter by as little as {low}. {least} is the least; measure what is left above the last ring.",
  "rings-nose-too-short":
    "The nose of the follower, {nose}, does not reach the last ring, {entry} down. The flange would meet the box first: add a ring, a spacer or a longer follower.",
  "rings-gap-and-nose-differ":
    "The gland gap was given as {gap}, but nose less entry makes {reckoned}. Measure the nose again, or the depth left.",
  "rings-port-out-of-reach":
    "No count of rings brings the lantern ring's window over the flush port: with {rings} below it, it is {offset} off. A spacer or another lantern ring is needed.",
  "rings-port-without-lantern": "There is a flush port but no lantern ring in this set: rings will cover the port.",
  "rings-stack-above-stroke":
    "The rings stand {stack} high and the stroke is {stroke}. A stack longer than the stroke runs dry inside unless it is fed.",
  "rings-slow-low-pressure":
    "At this pressure one mixer maker packs a grease-filled box with a single ring. Follow the sheet of this machine.",
  "rings-gap-depth":
    "The depth of the box is not known: {rings} rings are taken by practice, and neither entry nor spacer can be told. Count the old rings as they come out.",
  "rings-gap-nose": "Neither the gland gap nor the length of the nose is known, so the travel that they allow is not told.",
  "rings-gap-thread": "How much thread is left on the studs was not measured: look that the nuts can follow the gland.",
  "rings-gap-lantern": "Whether this box has a flush port and a lantern ring is not known: the set is worked out without.",
  "rings-gap-lantern-width": "The lantern ring was not measured: {width} wide is taken. Measure it before cutting.",
  "rings-gap-lantern-window": "The lands of the lantern ring were not measured: {land} each is taken.",
  "rings-gap-port":
    "Where the flush port is, is not known: the lantern ring is placed by practice. Find the port with a bent wire before seating it.",
  "rings-gap-port-diameter": "The size of the flush port was not measured: {diameter} is taken. Try drill shanks.",
};

/** Names of this topic, where the id is not itself the word. */
export const ringsNames: Readonly<Record<string, string>> = {
  first: "first joint",
  step: "hours between joints",
  "joint-hour": "clock hour of the joint",
  "joint-step": "hours between joints",
  "seating-loss": "part of its height that a ring loses in seating",
  seatingLossLow: "least loss in seating",
  seatingLossHigh: "most loss in seating",
  "ring-height-tallest": "height of a ring that loses least",
  "ring-height-end": "height of a ring at one end of the range",
  "ring-height-tolerance": "how far a seated ring's height may be off, as a part of it",
  "rings-fewest": "fewest rings",
  "rings-most": "most rings",
  "rings-that-fit": "rings that go in",
  "entry-least": "least entry",
  "entry-wanted": "entry to leave",
  leastEntry: "least entry",
  entryBand: "entry at one end of the range",
  noseLength: "length of the follower's nose",
  "nose-travel": "travel that the nose allows",
  "lantern-travel": "travel that the lantern ring allows",
  "part-from": "throat to the part",
  "part-height": "height of the part",
  "part-top": "throat to the top of the part",
  "depth-left": "box face to the part",
  setHeight: "height of the set",
  "depth-in-sections": "box depth in sections",
  "lantern-centre": "throat to middle of the lantern ring",
  "lantern.width": "width of the lantern ring",
  "lantern.window": "window of the lantern ring",
  "lantern.land": "one land of the lantern ring",
  "lantern.ringsThroatSide": "rings between throat and lantern ring",
};
