import { Diary, day, hour } from "../act.ts";
import { fitJob } from "../fit-job.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings, rpm } from "../said.ts";
import type { Story } from "../story.ts";

const known: Known = {
  name: "Showerwater pump 3 (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "turning",
  release: "allowed",
  zone: "ordinary",
  datum: "top",
  "service.fluids": ["cold-industrial-water"],
  "service.phase": "liquid",
  "service.temperature": degC(30),
  "service.pH": 7.2,
  "service.solids": "none",
  "service.sleeve": "austenitic-stainless",
  "service.rotation": rpm(2950),
  "service.pressure": bar(3.2),
  "flush.fitted": false,
  shaft: readings("micrometer", "39.97", "39.98"),
  bore: readings("caliper", "60.0", "60.1", "60.0"),
  depth: readings("depth-gauge", 64),
  "lantern.wanted": false,
  "follower.nose": mm(22),
  "studs.count": 2,
  "studs.thread": "M10",
  "studs.threadLeft": mm(20),
  "studs.nutCondition": "oiled",
  "condition.runout": mm(0.04),
  "condition.sleeveGroove": mm(0.05),
  "condition.followerClearance": mm(0.35),
  "condition.throatClearance": mm(0.4),
  "hazards.oldPacking": "recorded",
  "set.style": "eptfe-graphite",
  "set.series": "metric",
  "set.rings": 5,
  "set.seated": "each-tamped",
};

/** What was read every half hour since the start: minutes ago, drops a minute, box and product temperature. */
const round = [
  [230, 420, 34, 30],
  [200, 380, 37, 30],
  [170, 310, 39, 30],
  [140, 240, 41, 30],
  [110, 190, 42, 30],
  [80, 140, 44, 30],
  [50, 110, 44, 30],
  [20, 90, 43, 30],
] as const;

/** Started four hours ago, drawn up by half flats, nearly quiet. */
export const showerwaterPump: Story = (facts) => {
  const job = idFrom("job: showerwater pump");
  const diary = new Diary(idFrom("box: showerwater pump")).at(90 * day, "engineer").fields(known);
  fitJob(diary.at(7 * hour, "fitter"), job, known, facts, { last: "step-start" });
  diary.at(4 * hour).write("started", { job });
  for (const [minutesAgo, drip, box, product] of round) {
    diary.at(minutesAgo).reading("drip", drip).reading("box-temperature", degC(box)).reading("product-temperature", degC(product));
    if (drip > 100 && drip < 400) diary.adjustment([0.5, 0.5], "run-in");
  }
  return diary;
};
