import { Diary, day } from "../act.ts";
import { fitJob } from "../fit-job.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings, rpm } from "../said.ts";
import type { Story } from "../story.ts";

const known: Known = {
  name: "Seal-water booster 1 (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "turning",
  release: "allowed",
  zone: "ordinary",
  datum: "tag",
  "service.fluids": ["cold-industrial-water"],
  "service.phase": "liquid",
  "service.temperature": degC(18),
  "service.pH": 7.4,
  "service.solids": "none",
  "service.sleeve": "chromium-13-hardened",
  "service.rotation": rpm(1470),
  "service.pressure": bar(2.1),
  "flush.fitted": false,
  shaft: readings("micrometer", "44.96", "44.97"),
  bore: readings("caliper", "65.0", "65.0", "65.1"),
  depth: readings("depth-gauge", 70),
  "lantern.wanted": false,
  "follower.nose": mm(24),
  "studs.count": 2,
  "studs.thread": "M12",
  "studs.threadLeft": mm(18),
  "studs.nutCondition": "as-received",
  "condition.runout": mm(0.06),
  "condition.sleeveGroove": mm(0.15),
  "condition.followerClearance": mm(0.45),
  "condition.throatClearance": mm(0.5),
  "hazards.oldPacking": "recorded",
  "set.style": "aramid-spun",
  "set.series": "metric",
  "set.rings": 6,
  "set.seated": "each-tamped",
};

/** Rounds since it was packed: days ago, gland gap in millimetres, drops a minute. */
const rounds = [
  [330, 15, 60],
  [300, 14, 65],
  [270, 12.5, 70],
  [240, 11, 60],
  [210, 10, 75],
  [180, 8.5, 70],
  [150, 7, 80],
  [120, 5.5, 75],
  [90, 4.5, 90],
  [60, 3, 85],
  [30, 2, 110],
  [2, 1, 160],
] as const;

/** Packed last year; the gland has hardly any way left. */
export const sealWaterBooster: Story = (facts) => {
  const job = idFrom("job: seal-water booster");
  const diary = new Diary(idFrom("box: seal-water booster")).at(362 * day, "engineer").fields(known);
  diary.write("limit-set", {
    item: "runout",
    value: mm("0.075"),
    setBy: "Reliability engineer (invented)",
    why: "three years of our own repacks",
  });
  diary.write("limit-set", { item: "gland-gap", value: mm(1.5), setBy: "Reliability engineer (invented)", why: "time to plan the stop" });
  fitJob(diary.at(361 * day, "fitter"), job, known, facts, { last: "step-start" });
  diary.at(360 * day).write("started", { job });
  for (const [daysAgo, gap, drip] of rounds) {
    diary
      .at(daysAgo * day, "operator")
      .reading("gland-gap", mm(gap))
      .reading("drip", drip);
    if (daysAgo > 2) diary.adjustment([1, 1], "drip");
  }
  diary
    .at(2 * day - 5, "operator")
    .write("note", { text: "Follower is nearly on the box. Drip goes up again between rounds. (Invented.)" });
  return diary;
};
