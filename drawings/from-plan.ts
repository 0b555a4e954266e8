import type { Family as PackingFamily } from "@ringwright/core/materials";
import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Length } from "@ringwright/core/units";
import type { BoxDrawing, SetPart, Stated } from "./box-section/input.ts";
import type { Family } from "./shapes.ts";

/** The weave that stands for each family of packing. */
const weaveOf: Readonly<Record<PackingFamily, Family>> = {
  graphite: "graphite",
  carbon: "graphite",
  ptfe: "ptfe",
  aramid: "aramid",
  novoloid: "synthetic",
  acrylic: "synthetic",
  glass: "synthetic",
  "vegetable-fibre": "plant-fibre",
  melamine: "synthetic",
  metal: "metal-foil",
  injectable: "synthetic",
  "elastomer-core": "synthetic",
};

const kinds = { ring: "ring", "end-ring": "end-ring", spacer: "spacer", "throat-bush": "bush" } as const;

const measured = (value: Length): Stated => ({ value, by: "measured" });
const worked = (value: Length): Stated => ({ value, by: "worked" });

/**
 * The box of a plan as it is to be drawn, at finger-tight. None when shaft,
 * bore or the set is not known; the depth is the set's own height and a
 * follower's entry when it was not measured.
 */
export function boxOfPlan(plan: Plan, title: string): BoxDrawing | undefined {
  const { survey, box, rings, chosen } = plan;
  const shaft = answerOf(box.shaft)?.mean.mean;
  const bore = answerOf(box.bore)?.mean.mean;
  const set = answerOf(rings.set);
  if (shaft === undefined || bore === undefined || !set) return undefined;
  const depth = answerOf(box.depth)?.mean.mean;
  const style = answerOf(chosen.style);
  const { port = {}, follower = {}, studs = {}, flush = {}, condition = {} } = survey;
  const { lantern } = set;
  const throatToPort =
    port.fromThroat ?? (depth === undefined || port.fromFace === undefined ? undefined : ((depth - port.fromFace) as Length));
  const track = answerOf(rings.track);
  const thread = plan.load.thread?.diameter;
  return {
    title,
    ...(survey.place === undefined ? {} : { subtitle: survey.place }),
    wetEnd: survey.motion === "turning" || survey.motion === "stroking" ? "pump-side" : "product-side",
    shaft: measured(shaft),
    ...(survey.service?.sleeve === undefined || survey.motion !== "turning" ? {} : { sleeve: {} }),
    bore: measured(bore),
    depth: depth === undefined ? worked((set.setHeight + set.section) as Length) : measured(depth),
    ...(style === undefined ? {} : { family: weaveOf[style.family] }),
    parts: set.parts.flatMap((part): SetPart[] =>
      part.kind === "lantern"
        ? []
        : [{ kind: kinds[part.kind], from: part.from, to: part.to, ...(part.number === undefined ? {} : { number: part.number }) }],
    ),
    ...(lantern ? { lantern: { from: lantern.from, to: lantern.to, window: lantern.window } } : {}),
    ...(throatToPort === undefined || port.diameter === undefined
      ? {}
      : {
          port: {
            fromThroat: port.fromThroat === undefined ? worked(throatToPort) : measured(throatToPort),
            diameter: measured(port.diameter),
            ...(track === undefined ? {} : { state: track.atStart }),
            ...(flush.set === undefined ? {} : { flush: { value: flush.set, by: "measured" as const } }),
          },
        }),
    ...(condition.throatClearance === undefined ? {} : { throat: { gap: condition.throatClearance } }),
    follower: {
      ...(set.glandGap === undefined ? {} : { gap: follower.gap === undefined ? worked(set.glandGap) : measured(set.glandGap) }),
      ...(follower.nose === undefined ? {} : { nose: measured(follower.nose) }),
      ...(condition.followerClearance === undefined ? {} : { clearance: condition.followerClearance }),
    },
    ...(studs.count === undefined || thread === undefined
      ? {}
      : {
          studs: { diameter: thread, count: studs.count, ...(studs.threadLeft === undefined ? {} : { left: measured(studs.threadLeft) }) },
        }),
  };
}
