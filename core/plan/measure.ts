import { type Condition, condition } from "../condition/index.ts";
import { type Section, sectionBetween } from "../section/index.ts";
import type { PlausibleField } from "../uncertainty/index.ts";
import { type Measured, measured } from "../uncertainty/index.ts";
import type { Length } from "../units/index.ts";
import type { Warning } from "../workings/index.ts";
import { answerOf, type GivenTo, type Part, when } from "./part.ts";
import type { PlanFacts } from "./plan-facts.ts";
import type { Dimension, Survey } from "./survey.ts";

/** What was measured of the box, and what it says of shaft, bore and section. */
export interface MeasuredBox {
  readonly shaft: Part<Measured>;
  readonly bore: Part<Measured>;
  readonly depth: Part<Measured>;
  readonly section: Part<Section>;
  /** The stock section that the set is built of: the one asked for, else the nearest that fits. */
  readonly stock: Length | undefined;
  readonly condition: Part<Condition>;
}

function dimension(name: PlausibleField & keyof Survey, given: Dimension | undefined, facts: PlanFacts): Part<Measured> {
  const readings = given?.readings?.length ? given.readings : undefined;
  const planes = given?.planes?.length ? given.planes : undefined;
  if (!given || (!readings && !planes)) return { ok: false, needs: [name] };
  const { how, resolution } = given;
  const taken: GivenTo<typeof measured> = { field: name };
  if (planes) taken.planes = planes;
  else if (readings) taken.readings = readings;
  if (how !== undefined) taken.how = how;
  if (resolution !== undefined) taken.resolution = resolution;
  const found = measured(taken, facts.uncertainty);
  if (!found.ok) return { ok: false, refusal: { ...found.refusal, input: `${name}.${found.refusal.input}` } };
  return found.warnings.length === 0 ? found : { ...found, warnings: found.warnings.map((warning) => named(name, warning)) };
}

/** A warning about one reading says of which dimension; one about their mean is about the dimension. */
function named(of: string, warning: Warning): Warning {
  const ofMean = warning.kind === "slip" && (warning.input === "readings" || warning.input === "planes");
  const input = `${of}${warning.input === undefined || ofMean ? "" : `.${warning.input}`}`;
  const { says } = warning;
  return { ...warning, input, says: says.with?.input === undefined ? says : { ...says, with: { ...says.with, input } } };
}

/** Judges the dimensions and the condition of a surveyed box. */
export function measureBox(survey: Survey, facts: PlanFacts): MeasuredBox {
  const shaft = dimension("shaft", survey.shaft, facts);
  const bore = dimension("bore", survey.bore, facts);
  const depth = dimension("depth", survey.depth, facts);
  const { series, section: asked } = survey.set ?? {};
  const found = when({ shaft: answerOf(shaft), bore: answerOf(bore) }, (known) => {
    const across = { shaft: known.shaft.mean, bore: known.bore.mean };
    return sectionBetween(
      series === undefined ? across : { shaft: across.shaft, bore: across.bore, series },
      facts.section.stock,
      facts.uncertainty,
    );
  });
  const stock = asked ?? answerOf(found)?.choice[0] ?? answerOf(found)?.stock[0]?.size;
  return { shaft, bore, depth, section: found, stock, condition: judged(survey, { shaft, bore, depth }, stock, facts) };
}

function judged(
  survey: Survey,
  { shaft, bore, depth }: { readonly shaft: Part<Measured>; readonly bore: Part<Measured>; readonly depth: Part<Measured> },
  section: Length | undefined,
  facts: PlanFacts,
): Part<Condition> {
  const d = answerOf(shaft)?.mean.mean;
  const D = answerOf(bore)?.mean.mean;
  const boxDepth = answerOf(depth)?.mean.mean;
  const given: GivenTo<typeof condition> = { motion: survey.motion, lantern: hasLantern(survey), ...survey.condition };
  if (d !== undefined && D !== undefined && d < D) {
    given.shaft = d;
    given.bore = D;
  }
  if (boxDepth !== undefined) given.boxDepth = boxDepth;
  if (section !== undefined) given.section = section;
  return condition(given, facts.condition, facts.uncertainty);
}

/** Whether the set is to have a lantern ring, as far as the survey says. */
export function hasLantern({ lantern, port, motion }: Survey): boolean {
  if (lantern?.wanted !== undefined) return lantern.wanted;
  const stem = motion === "rising-stem" || motion === "quarter-turn-stem";
  return (
    !stem &&
    (lantern?.width !== undefined || port?.diameter !== undefined || port?.fromFace !== undefined || port?.fromThroat !== undefined)
  );
}
