import { Diary, day } from "../act.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings, rpm } from "../said.ts";
import type { Story } from "../story.ts";

const known: Known = {
  name: "Starch tank agitator (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "slow-agitator",
  release: null,
  zone: "ordinary",
  datum: "tag",
  "service.fluids": ["cold-industrial-water"],
  "service.phase": "liquid",
  "service.temperature": degC(60),
  "service.pH": 6.5,
  "service.solids": "fine",
  "service.sleeve": "austenitic-stainless",
  "service.rotation": rpm(45),
  "service.pressure": bar(0.3),
  shaft: readings("caliper", "70.0", "69.9"),
  bore: readings("caliper", "101.8", "102.0"),
  depth: readings("rule", 105),
  "follower.nose": mm(30),
  "studs.count": 4,
  "studs.thread": "M16",
  "studs.threadLeft": mm(30),
  "condition.runout": mm(0.4),
  "hazards.vertical": "yes",
  "hazards.oldPacking": "unknown",
  "set.series": "metric",
};

/** Runs; nobody has said whether what comes out may be let out. */
export const agitator: Story = () => {
  const diary = new Diary(idFrom("box: agitator")).at(75 * day, "engineer").fields(known);
  return diary
    .at(5 * day, "operator")
    .reading("drip", 4)
    .reading("gland-gap", mm(18));
};
