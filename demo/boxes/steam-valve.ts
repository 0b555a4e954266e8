import { Diary, day } from "../act.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings } from "../said.ts";
import type { Story } from "../story.ts";

const known: Known = {
  name: "Steam valve 12, stem (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "rising-stem",
  release: "not-allowed",
  zone: null,
  datum: "tag",
  "service.fluids": ["saturated-steam"],
  "service.phase": "gas",
  "service.temperature": degC(184),
  "service.pressure": bar(10),
  "service.sleeve": "chromium-13",
  shaft: readings("micrometer", "25.01", "25.00"),
  bore: readings("caliper", "38.1", "38.0"),
  depth: readings("depth-gauge", 45),
  "follower.nose": mm(18),
  "studs.count": 2,
  "studs.thread": "M12",
  "studs.threadLeft": mm(22),
  "studs.propertyClass": "8.8",
  "studs.nutCondition": "anti-seize",
  "condition.followerClearance": mm(0.3),
  "hazards.hot": "yes",
  "hazards.oldPacking": "since-1980",
  "set.style": "eg-die",
  "set.series": "metric",
  "set.rings": 5,
};

/** Measured when the line was last down; nobody has said whether a tablet may go there. */
export const steamValve: Story = () => {
  const diary = new Diary(idFrom("box: steam valve")).at(40 * day, "engineer").fields(known);
  return diary
    .at(6 * day, "operator")
    .reading("leak", "wisp")
    .write("note", { text: "A wisp at the stem since the cold start. (Invented.)" });
};
