import { Diary, day, hour } from "../act.ts";
import { fitJob } from "../fit-job.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings, rpm } from "../said.ts";
import type { Story } from "../story.ts";

const known: Known = {
  name: "White-water pump 1, drive-end box (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "turning",
  release: "allowed",
  zone: "ordinary",
  datum: "discharge",
  "service.fluids": ["cold-industrial-water"],
  "service.phase": "liquid",
  "service.temperature": degC(38),
  "service.pH": 7,
  "service.solids": "fine",
  "service.sleeve": "chromium-oxide",
  "service.rotation": rpm(980),
  "service.pressure": bar(1.6),
  "flush.fitted": true,
  "flush.supply": bar(4.5),
  "flush.set": bar(2.6),
  shaft: readings("micrometer", "79.95", "79.94", "79.95"),
  bore: readings("bore-gauge", "112.02", "112.05", "112.03"),
  depth: readings("depth-gauge", 128),
  "lantern.wanted": true,
  "lantern.width": mm(25),
  "lantern.land": mm(3),
  "port.fromFace": mm(84),
  "port.diameter": mm(8),
  "follower.nose": mm(38),
  "studs.count": 4,
  "studs.thread": "M16",
  "studs.threadLeft": mm(34),
  "studs.nutCondition": "as-received",
  "condition.runout": mm(0.05),
  "condition.shaftLift": mm(0.06),
  "condition.sleeveGroove": mm(0.05),
  "condition.followerClearance": mm(0.4),
  "condition.throatClearance": mm(0.5),
  "hazards.oldPacking": "recorded",
  "set.style": "aramid-spun",
  "set.series": "metric",
  "set.rings": 6,
  "set.seated": "each-tamped",
};

/** Packed today, turned by hand, and not started yet. */
export const whiteWaterPump: Story = (facts) => {
  const diary = new Diary(idFrom("box: white-water pump")).at(200 * day, "engineer").fields(known);
  return fitJob(diary.at(2.5 * hour, "second"), idFrom("job: white-water pump"), known, facts, { last: "step-turn-by-hand" });
};
