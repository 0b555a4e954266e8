import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Length } from "@ringwright/core/units";
import type { BoxDrawing, SetPart, Stated } from "./box-section/input.ts";
import type { CutStrip } from "./cut-strip.ts";
import type { JointClock } from "./joint-clock.ts";
import type { StressCurve } from "./stress-curve.ts";

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
    ...(style === undefined ? {} : { family: style.family }),
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
          studs: {
            diameter: thread,
            ...(studs.thread === undefined ? {} : { thread: studs.thread }),
            count: studs.count,
            ...(studs.threadLeft === undefined ? {} : { left: measured(studs.threadLeft) }),
          },
        }),
  };
}

/** The joint clock of a plan's set; none when shaft, bore or the set is not known. */
export function jointClockOfPlan({ box, rings, survey }: Plan): JointClock | undefined {
  const shaft = answerOf(box.shaft)?.mean.mean;
  const bore = answerOf(box.bore)?.mean.mean;
  const set = answerOf(rings.set);
  if (shaft === undefined || bore === undefined || !set) return undefined;
  const angle = answerOf(rings.cut)?.angle;
  return {
    shaft,
    bore,
    joints: set.joints.map((clock, index) => ({ ring: index + 1, clock })),
    ...(angle === undefined ? {} : { angle }),
    datum: { id: `plan-datum-${survey.datum ?? "top"}` },
  };
}

/** The strip to cut for one ring of a plan; none when it is not known how long. */
export function stripOfPlan({ box, rings, chosen }: Plan): CutStrip | undefined {
  const cut = answerOf(rings.cut);
  if (!cut || box.stock === undefined) return undefined;
  const style = answerOf(chosen.style);
  return {
    section: box.stock,
    length: cut.length.mean,
    cutLength: cut.cutLength,
    angle: cut.angle,
    mandrel: cut.mandrel,
    ...(style === undefined ? {} : { family: style.family }),
  };
}

/** How much of a further push reaches each part of a plan's set; none when the set is not known. */
export function pushOfPlan({ rings, load }: Plan): StressCurve | undefined {
  const set = answerOf(rings.set);
  if (!set) return undefined;
  const curve = (motion: "turning" | "standing") => {
    const profile = answerOf(motion === "turning" ? load.turning : load.standing)?.profile;
    const [first] = profile ?? [];
    if (!profile || !first || first.axial <= 0) return [];
    return [
      {
        motion,
        points: profile.map(({ depth, axial }) => ({ fromThroat: (set.setHeight - depth) as Length, share: axial / first.axial })),
      },
    ];
  };
  const curves = [...curve("turning"), ...curve("standing")];
  if (curves.length === 0) return undefined;
  return {
    parts: set.parts.map(({ kind, number, from, to }) => ({
      from,
      to,
      ...(number === undefined ? {} : { ring: number }),
      ...(kind === "lantern" || kind === "spacer" ? { kind } : kind === "throat-bush" ? { kind: "bush" as const } : {}),
    })),
    curves,
  };
}
