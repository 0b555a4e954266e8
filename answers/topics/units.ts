import { allowedUnits, type Kind, parseQuantity, siUnits } from "@ringwright/core/units";
import { begin, refuse, rule, type Warning } from "@ringwright/core/workings";
import { type AnyAnswer, answer } from "../answer.ts";
import { choiceField, groupField, optional, textField, unreadId } from "../field.ts";
import { groupShape, maybe, numberShape, textShape } from "../shape.ts";

const kindsAsked = [
  "length",
  "pressure",
  "temperature",
  "torque",
  "force",
  "speed",
  "flow",
  "volume",
  "mass",
  "power",
  "angle",
  "rotation",
  "absolute-pressure",
  "pressure-difference",
  "temperature-difference",
  "stress",
  "viscosity",
  "density",
  "area",
  "time",
  "heat-capacity",
  "conductance",
] as const satisfies readonly Kind[];

const conversion = new Map(
  kindsAsked.map((kind) => [
    kind,
    rule({
      id: `read-${kind}`,
      name: kind,
      symbol: "x",
      expression: "what was typed, by the exact factor of its unit",
      unit: siUnits[kind],
      inputs: [],
      citation: { source: "nist-sp-811", at: "appendix B" },
    }),
  ]),
);

/** Kinds that nothing can be below: absolute temperature, and pressure above vacuum. */
const countsFromNothing: ReadonlySet<Kind> = new Set<Kind>(["temperature", "absolute-pressure"]);

export const unitsAnswers: readonly AnyAnswer[] = [
  answer({
    name: "quantity",
    about: "Reads a quantity as people write it, into SI.",
    question: groupField({
      text: textField("What was typed, such as 1 3/4 in"),
      kind: choiceField(kindsAsked),
      beside: optional(textField("The unit shown beside the field, for a bare number", 20)),
    }),
    answer: groupShape({ value: numberShape, unit: textShape, typed: textShape, typedUnit: textShape, mayMean: maybe(numberShape) }),
    work({ text, kind, beside }) {
      const read = parseQuantity(text, kind, beside);
      if (!read.ok) {
        const allowed = allowedUnits(kind);
        return {
          ok: false,
          refusal: {
            kind: read.unread.kind,
            input: "text",
            given: text,
            allowed,
            says: { id: unreadId(read.unread), with: { input: "text", given: text, allowed: allowed.join(", ") } },
          },
        };
      }
      const work = begin();
      const { value, unit, mayMean } = read.quantity;
      if (countsFromNothing.has(kind) && value < 0) {
        const says = { id: "below-nothing", with: { input: "text", given: text } };
        return refuse({ kind: "impossible", input: "text", given: text, allowed: { min: 0, unit: siUnits[kind] }, says });
      }
      const shared = conversion.get(kind);
      if (shared) work.step(shared, [], value);
      if (mayMean !== undefined) work.warn(mayMeanOther(text, kind, value, mayMean));
      return work.found({ value, unit: siUnits[kind], typed: text, typedUnit: unit, mayMean });
    },
  }),
];

function mayMeanOther(text: string, kind: Kind, value: number, other: number): Warning {
  const says = { id: "comma-or-thousands", with: { input: "text", typed: text, read: { value, kind }, other: { value: other, kind } } };
  return { kind: "slip", input: "text", given: text, suggestion: other, says };
}
