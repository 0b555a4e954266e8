import { Diary, day, hour } from "../act.ts";
import { fitJob } from "../fit-job.ts";
import { idFrom } from "../ids.ts";
import { bar, degC, type Known, mm, readings, rpm } from "../said.ts";
import type { Story } from "../story.ts";

const described: Known = {
  name: "Stock pump 2, coupling-side box (invented)",
  place: "Sallowmere board mill (invented)",
  motion: "turning",
  release: "allowed",
  zone: "ordinary",
  datum: "top",
  "service.fluids": ["pulp-stock-brown-unbleached"],
  "service.phase": "liquid",
  "service.temperature": degC(45),
  "service.pH": 7.5,
  "service.solids": "fibrous",
  "service.sleeve": "chromium-13-hardened",
  "service.rotation": rpm(1450),
  "service.suction": bar(0.4),
  "service.discharge": bar(3.8),
  "service.impeller": "balance-holes-back-rings",
  "service.pressure": null,
  "flush.fitted": true,
  "flush.supply": bar(4),
};

const measured: Known = {
  shaft: readings("micrometer", "49.96", "49.98", "49.97"),
  bore: readings("caliper-at-mouth", "75.0", "75.1", "75.0", "74.9"),
  "lantern.wanted": true,
  "lantern.width": mm(16),
  "lantern.land": mm(2),
  "port.fromFace": mm(61),
  "port.diameter": mm(6),
  "condition.sleeveGroove": mm(0.1),
};

/** Opened this morning, old rings out, half of it measured. */
export const stockPump: Story = (facts) => {
  const job = idFrom("job: stock pump");
  const diary = new Diary(idFrom("box: stock pump")).at(400 * day, "engineer").fields(described);
  diary
    .at(3 * day, "operator")
    .reading("drip", 190)
    .reading("gland-gap", mm(2.5));
  diary.write("note", { text: "Nuts have no way left worth having. Down for packing on the next stop. (Invented.)" });
  fitJob(diary.at(3 * hour, "fitter"), job, { ...described, ...measured }, facts, { last: "step-keep-order" });
  diary.at(1.2 * hour).write("old-rings", {
    rings: [
      { number: 5, colour: "grey", firm: "yes" },
      { number: 4, colour: "grey", firm: "yes" },
      { number: 3, colour: "black", firm: "hard" },
    ],
    note: "Rings behind the lantern came out in pieces. (Invented.)",
  });
  diary.at(0.5 * hour).fields(measured);
  return diary;
};
