import { lanternLimit, lanternPlace, lanternTrack, openings } from "@ringwright/core/lantern";
import { type AnyAnswer, answer } from "../answer.ts";
import { countField, groupField, numberField, optional, quantityField, yesNoField } from "../field.ts";
import {
  bandShape,
  choiceShape,
  countShape,
  groupShape,
  listShape,
  maybe,
  numberShape,
  quantityShape,
  uncertainShape,
  yesNoShape,
} from "../shape.ts";

const length = quantityShape("length");

const portFields = {
  ringHeight: quantityField("length", "Height of one ring, seated, at finger-tight."),
  lanternWidth: quantityField("length"),
  window: quantityField("length", "Width of the lantern ring less both lands."),
  portFromThroat: quantityField("length", "Throat to the middle of the flush port."),
  portDiameter: quantityField("length"),
  belowRings: optional(quantityField("length", "Bush or spacer between the throat and ring 1.")),
};

const setFields = {
  ringsThroatSide: countField({ min: 0, max: 100 }, "Rings between throat and lantern ring."),
  ringsGlandSide: countField({ min: 0, max: 100 }),
  ...portFields,
};

const pushFields = {
  shaft: optional(quantityField("length", "With the bore: works out the share weighted by stress too.")),
  bore: optional(quantityField("length")),
  ratio: optional(numberField({}, "Radial over axial stress, K.")),
  frictionShaft: optional(numberField()),
  frictionBore: optional(numberField()),
  turning: optional(yesNoField("Whether the shaft turns during a push.")),
};

/** Members of the lantern limit, also inside a ring set. */
export const limitMembers = {
  limits: yesNoShape,
  offsetAtStart: length,
  share: numberShape,
  movement: maybe(uncertainShape("length")),
  carefulMovement: maybe(length),
  gap: maybe(bandShape("length")),
  shutGap: maybe(bandShape("length")),
  repackGap: maybe(length),
  closedBy: maybe(countShape),
};

export const lanternAnswers: readonly AnyAnswer[] = [
  answer({
    name: "lantern-track",
    about: "Where the lantern ring stands against the flush port while the gland is pulled up.",
    question: groupField({ ...setFields, ...pushFields, gapTravel: quantityField("length", "How far the gland can move.") }),
    answer: groupShape({
      offsetAtStart: length,
      offsetAtEnd: length,
      share: numberShape,
      atStart: choiceShape(openings),
      atEnd: choiceShape(openings),
      openThroughout: yesNoShape,
      opensFrom: maybe(length),
      opensUntil: maybe(length),
      shutAt: maybe(length),
      closedBy: maybe(countShape),
      stressWeighted: maybe(groupShape({ share: numberShape, opensUntil: maybe(length) })),
    }),
    work: lanternTrack,
  }),
  answer({
    name: "lantern-limit",
    about: "The gland gap at which the flush port begins to close, with its error, and the drill shank to check it with.",
    question: groupField({
      ...setFields,
      ...pushFields,
      glandGap: optional(quantityField("length", "Follower flange to box face at finger-tight.")),
      gapWorkedOut: optional(yesNoField("The gland gap was not measured but worked out from this ring height.")),
      glandGapUncertainty: optional(quantityField("length")),
      portFromThroatUncertainty: optional(quantityField("length", "Standard uncertainty, as the next ones.")),
      portDiameterUncertainty: optional(quantityField("length")),
      windowUncertainty: optional(quantityField("length")),
      lanternWidthUncertainty: optional(quantityField("length")),
      ringHeightUncertainty: optional(quantityField("length")),
      shareUncertainty: optional(numberField({}, "Standard uncertainty of the share, as a part of it.")),
    }),
    answer: groupShape(limitMembers),
    work: lanternLimit,
  }),
  answer({
    name: "lantern-place",
    about: "How many rings belong between throat and lantern ring so that the flush port stays open.",
    question: groupField({
      ...portFields,
      rings: countField({ min: 1, max: 100 }, "All rings of the set."),
      gapTravel: optional(quantityField("length", "How far the gland can move.")),
    }),
    answer: groupShape({
      best: countShape,
      places: listShape(
        groupShape({
          ringsThroatSide: countShape,
          offsetAtStart: length,
          openAtStart: yesNoShape,
          openFor: length,
          openThroughout: yesNoShape,
        }),
      ),
    }),
    work: lanternPlace,
  }),
];
