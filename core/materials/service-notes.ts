import type { Citation } from "../sources/index.ts";
import type { Shown, Workings } from "../workings/index.ts";
import type { Asked } from "./asked.ts";
import { citeFact } from "./cite-fact.ts";
import { softer } from "./hardness.ts";

type Kind = "gap" | "note" | "caution" | "limit";

/** What is to be said of the service as a whole: gaps in the question, gas, release, a ruined sleeve, grit harder than the sleeve. */
export function noteService(work: Workings, asked: Asked): void {
  const { service, ready } = asked;
  const { selection } = ready.facts;
  const say = (kind: Kind, id: string, input: string, citation?: Citation, values?: Readonly<Record<string, Shown>>) =>
    work.warn({ kind, input, says: values ? { id, with: values } : { id }, ...(citation ? { citation } : {}) });

  if (asked.fluids.length === 0) say("gap", "material-without-fluids", "fluids");
  if (service.temperature === undefined) say("gap", "material-without-temperature", "temperature");
  if (service.pressure === undefined) say("gap", "material-without-pressure", "pressure");
  if (asked.rotating && service.speed === undefined) say("gap", "material-without-speed", "speed");
  if (service.pH === undefined && asked.conducts !== false && asked.fluids.length > 0) say("gap", "material-without-ph", "pH");
  if (asked.hardness.floor === "unknown") say("gap", "material-without-sleeve", "sleeve");
  if (asked.condition.overall === undefined) say("gap", "material-without-condition", "condition");
  if (asked.rotating && (service.release === undefined || service.release === "unknown")) say("gap", "material-without-release", "release");
  for (const says of asked.elsewhere) work.warn({ kind: "outside-validity", input: "fluids", says });

  if (asked.gas === true) {
    say("caution", asked.rotating ? "gas-on-a-turning-shaft" : "gas-on-a-stem", "phase", citeFact(selection.gas));
  }
  if (service.release === "not-allowed" && asked.rotating) {
    const wetted = service.film === "flush-to-closed-drain" || service.film === "grease";
    const refused = service.film !== undefined && !wetted;
    const id = refused ? "packing-refused-here" : wetted ? "release-film-given" : "release-film-not-said";
    say(refused ? "limit" : "caution", id, "release", citeFact(selection.release));
  }
  if (asked.condition.overall === "poor") say("note", "cheapest-until-repaired", "condition", citeFact(selection.poorEquipment));
  if (asked.sleeve.material === "cast-iron") {
    const surface = ready.sleeves.get("cast-iron")?.surface;
    if (surface) say("caution", "cast-iron-cannot-be-polished", "sleeve", citeFact(surface));
  }
  const gritty = asked.solids === "fine" || asked.solids === "coarse";
  const { measured, scale } = asked.hardness;
  const quartz = ready.facts.quartz.min;
  if (gritty && measured !== undefined && quartz !== null) {
    if (softer(measured, scale, quartz, "HV", ready.facts.hardnessScales)) {
      say("note", "softer-than-the-grit-is-cut", "sleeve", citeFact(ready.facts.quartz));
    }
  }
}
