import { motions } from "@ringwright/core/box";
import {
  type ConditionReading,
  type ConditionSighting,
  condition,
  conditionReadings,
  conditionSightings,
  deciders,
  type LimitVerdict,
  outcomes,
  verdicts,
} from "@ringwright/core/condition";
import { sources } from "@ringwright/core/sources";
import type { Length } from "@ringwright/core/units";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, type Field, groupField, listField, numberField, optional, quantityField, textField, yesNoField } from "../field.ts";
import {
  choiceShape,
  countShape,
  groupShape,
  listShape,
  maybe,
  numberShape,
  type Shape,
  textShape,
  uncertainShape,
  yesNoShape,
} from "../shape.ts";

type Readings = { readonly [N in ConditionReading]: Field<Length | undefined> };
const readings = Object.fromEntries(conditionReadings.map((name) => [name, optional(quantityField("length"))])) as Readings;
const sightings = Object.fromEntries(Object.entries(conditionSightings).map(([name, words]) => [name, optional(choiceField(words))])) as {
  readonly [N in ConditionSighting]: Field<string | undefined>;
};

/** A limit or a reading: metres, or 1 for a plain number such as HB. */
const reading = { value: numberShape, unit: choiceShape(["m", "1"]) };

const limitGroup = groupShape({
  id: textShape,
  ...reading,
  source: textShape,
  at: maybe(textShape),
  seen: choiceShape(["read", "quoted", "memory", "derived", "practice"]),
  outcome: choiceShape(outcomes),
  beside: yesNoShape,
});

/** One limit held against a reading, with how it was seen: as the value says, else as its source does. */
const limitShape: Shape<LimitVerdict> = {
  ...limitGroup,
  write: (limit) => limitGroup.write({ ...limit, seen: limit.seen ?? sources[limit.source].seen }),
};

export const conditionAnswers: readonly AnyAnswer[] = [
  answer({
    name: "condition",
    about: "What state shaft, sleeve, follower and box are in: a verdict for each point, with the limits and how they split.",
    question: groupField({
      motion: optional(choiceField(motions, "Turning when left out.")),
      critical: optional(yesNoField("Critical service: runout by dial is then required.")),
      renewed: optional(listField(choiceField(["shaft", "sleeve"]), { max: 2 }, "What was renewed; alignment is then checked again.")),
      shaft: optional(quantityField("length")),
      bore: optional(quantityField("length")),
      section: optional(quantityField("length", "Used instead of half of bore less shaft.")),
      lantern: optional(yesNoField("Whether the set has a lantern ring.")),
      ...readings,
      hardness: optional(numberField({}, "Brinell number of the sleeve.")),
      clockGaps: optional(listField(quantityField("length"), { min: 4, max: 4 }, "Between shaft and bore at 12, 3, 6 and 9 o'clock.")),
      sightings: optional(groupField(sightings, "What was looked at and not measured.")),
      houseLimits: optional(
        listField(
          groupField({
            item: textField("Which point of the survey: runout, shaft-lift, ..."),
            value: optional(quantityField("length")),
            number: optional(numberField({}, "For hardness.")),
            setBy: textField("Who set it."),
            why: optional(textField()),
          }),
          { max: 50 },
          "The site's own limits; where one is given it decides.",
        ),
      ),
      uncertainties: optional(
        groupField(
          { ...readings, clockGaps: optional(quantityField("length")), section: optional(quantityField("length")) },
          "Standard uncertainty of a reading, where it is known better than the usual one.",
        ),
      ),
    }),
    answer: groupShape({
      overall: choiceShape(verdicts),
      missing: listShape(textShape),
      verdicts: listShape(
        groupShape({
          id: textShape,
          verdict: choiceShape(verdicts),
          required: yesNoShape,
          measured: maybe(groupShape({ ...reading, standardUncertainty: numberShape })),
          seen: maybe(textShape),
          decidedBy: choiceShape(deciders),
          passes: countShape,
          of: countShape,
          limits: listShape(limitShape),
          houseLimit: maybe(groupShape({ ...reading, setBy: textShape, why: maybe(textShape), outcome: choiceShape(outcomes) })),
          advice: listShape(textShape),
        }),
      ),
      offset: maybe(
        groupShape({
          offset: uncertainShape("length"),
          direction: maybe(numberShape),
          directionUncertainty: maybe(numberShape),
          meanGap: uncertainShape("length"),
        }),
      ),
    }),
    work: (question, facts) => condition(question, facts.condition, facts.uncertainty),
  }),
];
