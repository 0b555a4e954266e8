import { Diary, day } from "../act.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings, typed } from "../said.ts";
import type { Story } from "../story.ts";

const known: Known = {
  name: "Solvent dosing pump 1, plunger (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "stroking",
  release: "not-allowed",
  zone: "hazardous",
  datum: "top",
  "service.fluids": ["aromatics-ketones-chlorinated"],
  "service.phase": "liquid",
  "service.temperature": degC(20),
  "service.solids": "none",
  "service.sleeve": "chromium-oxide",
  "service.rotation": typed("rotation", "90 rpm"),
  "service.stroke": mm(60),
  "service.pressure": bar(12),
  "flush.fitted": true,
  "flush.supply": bar(16),
  "flush.set": bar(13),
  "lantern.wanted": true,
  "lantern.width": mm(12),
  "lantern.land": mm(2),
  "port.fromFace": mm(36),
  "port.diameter": mm(5),
  shaft: readings("micrometer", "29.98", "29.98"),
  bore: readings("bore-gauge", "46.02", "46.01"),
  depth: readings("depth-gauge", 56),
  "follower.nose": mm(20),
  "studs.count": 4,
  "studs.thread": "M10",
  "studs.threadLeft": mm(18),
  "studs.nutCondition": "oiled",
  "condition.followerClearance": mm(0.2),
  "hazards.flammable": "yes",
  "hazards.toxic": "yes",
  "hazards.oldPacking": "recorded",
  "set.style": "ptfe-lub",
  "set.series": "metric",
  "set.rings": 4,
};

/** Stands where ordinary devices may not go: written on the card, typed in afterwards. */
export const plungerPump: Story = () => {
  const diary = new Diary(idFrom("box: plunger pump")).at(120 * day, "engineer").fields(known);
  return diary
    .at(11 * day, "second")
    .reading("gland-gap", mm(11))
    .write("note", { text: "Read outside, from the card. (Invented.)" });
};
