import { readAllFacts } from "@ringwright/data";
import { expect, test } from "vitest";
import { quantity } from "../units/index.ts";
import { type Materials, materials, type Service } from "./index.ts";

const facts = readAllFacts().materials;
const celsius = (value: number) => quantity("temperature", value, "degC");
const bar = (value: number) => quantity("pressure", value, "bar");
const speed = (value: number) => quantity("speed", value, "m/s");

function chosen(service: Service): Materials {
  const answer = materials(service, facts);
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value;
}
const ids = (list: readonly { readonly style: string }[]) => list.map(({ style }) => style);
const stopsOf = (found: Materials, style: string) =>
  (found.rejected.find((entry) => entry.style === style)?.because ?? [])
    .filter(({ kind }) => kind === "stop")
    .map(({ constraint }) => constraint);
const warningsOf = (service: Service) => {
  const answer = materials(service, facts);
  return answer.ok ? answer.warnings.map(({ says }) => says.id) : [];
};

// Swedish pump handbook and polymer reference pages: strong sulfuric acid is for PTFE; aramid and plant fibre do not stand it.
test("strong sulfuric acid stops aramid and plant fibre, and lets PTFE through", () => {
  const found = chosen({ motion: "turning", fluids: ["sulfuric-concentrated-above-70"], temperature: celsius(40) });
  for (const style of ["aramid-filament", "aramid-spun", "aramid-corner-hybrid", "ramie-flax-ptfe", "jute-flax-grease", "cotton"]) {
    expect(stopsOf(found, style), style).toContain("chemistry");
  }
  expect(ids(found.ranked)).toContain("ptfe-dry");
  expect(ids(found.ranked)).toContain("ptfe-lub");
});

// MIL-P-24396A type C and ASTM G63: oxygen only for a tested, cleaned, unlubricated lot.
test("oxygen stops every packing, until a tested, cleaned lot of dry PTFE is put down", () => {
  const service: Service = { motion: "rising-stem", fluids: ["oxygen-gas"], temperature: celsius(20), use: "oxygen" };
  expect(chosen(service).ranked).toEqual([]);
  const lots = facts.styles.map(({ id }) => ({ style: id, oxygenLot: true, sheet: "test report" }));
  const found = chosen({ ...service, items: lots });
  expect(ids(found.ranked)).toContain("ptfe-dry");
  for (const greased of ["ptfe-lub", "jute-flax-grease", "cotton", "injectable", "graphite-yarn", "aramid-filament"]) {
    expect(ids(found.rejected), greased).toContain(greased);
  }
});

test("a remembered no in oxygen cannot be lifted by a chart", () => {
  const found = chosen({
    motion: "rising-stem",
    fluids: ["oxygen-gas"],
    items: [{ style: "aramid-spun", suits: ["oxygen-gas"], sheet: "chart", oxygenLot: true, lubricant: "none" }],
  });
  expect(stopsOf(found, "aramid-spun")).toContain("chemistry");
});

// ESA and FSA columns on galvanic corrosion: graphite on wet 13 % chromium steel.
test("graphite on wet 13 % chromium steel is stopped, on austenitic steel or with an inhibitor it is not", () => {
  const service: Service = { motion: "turning", fluids: ["seawater-brine"], temperature: celsius(20) };
  const chromium = { ...service, sleeve: { material: "chromium-13-hardened" } };
  for (const style of ["eg-braid", "eg-braid-carbon", "graphite-yarn", "carbon-ptfe"]) {
    expect(stopsOf(chosen(chromium), style), style).toContain("galvanic");
    expect(stopsOf(chosen({ ...service, sleeve: { material: "austenitic-stainless", hardness: 300 } }), style), style).not.toContain(
      "galvanic",
    );
    expect(stopsOf(chosen({ ...chromium, items: [{ style, inhibited: true }] }), style), style).not.toContain("galvanic");
  }
  expect(ids(chosen(chromium).ranked)).toContain("ptfe-lub");
});

test("dry superheated steam does not eat chromium steel under graphite, unless it stands wet while idle", () => {
  const steam: Service = { motion: "rising-stem", fluids: ["superheated-steam-above-260"], temperature: celsius(400) };
  expect(stopsOf(chosen({ ...steam, sleeve: { material: "chromium-13" } }), "eg-die")).toEqual([]);
  expect(stopsOf(chosen({ ...steam, sleeve: { material: "chromium-13", wetWhenIdle: true } }), "eg-die")).toEqual(["galvanic"]);
});

// Swedish pump handbook: glass fibre not with hydrofluoric acid.
test("hydrofluoric acid stops glass", () => {
  expect(stopsOf(chosen({ motion: "rising-stem", fluids: ["hydrofluoric"] }), "glass-graphite")).toContain("chemistry");
});

// US Safe Drinking Water Act: at most 0.25 % lead. NSF/ANSI 61: the item itself is listed.
test("lead never goes into drinking water, and nothing goes in without a listing", () => {
  const service: Service = { motion: "turning", fluids: ["potable-water"], use: "potable", temperature: celsius(12), speed: speed(4) };
  const bare = chosen(service);
  expect(bare.ranked).toEqual([]);
  expect(stopsOf(bare, "lead-foil")).toContain("lead");
  const listed = chosen({ ...service, items: facts.styles.map(({ id }) => ({ style: id, listed: ["potable"] as const })) });
  expect(stopsOf(listed, "lead-foil")).toContain("lead");
  expect(ids(listed.ranked)).toContain("ptfe-lub");
  expect(bare.nearly.find(({ style }) => style === "ptfe-lub")).toMatchObject({
    constraint: "listing",
    clears: { id: "clear-by-listing" },
  });
});

// MIL-P-24503B: graphite ribbon and rings to 1000 degF in steam valves; braided PTFE to 450 degF (MIL-P-24396A).
test("steam at 400 °C stops PTFE and lets graphite through", () => {
  const found = chosen({ motion: "rising-stem", fluids: ["superheated-steam-above-260"], temperature: celsius(400), pressure: bar(60) });
  for (const style of ["ptfe-dry", "ptfe-lub", "eptfe-graphite", "carbon-ptfe"])
    expect(stopsOf(found, style), style).toContain("temperature");
  expect(ids(found.ranked)).toEqual(expect.arrayContaining(["eg-die", "eg-braid-wire", "eg-braid", "graphite-yarn"]));
});

// Tribology Handbook: at least 250 Brinell under any packing.
test("slurry on a soft sleeve stops aramid; plant fibre is only warned of", () => {
  const found = chosen({ motion: "turning", fluids: ["mineral-slurry"], solids: "coarse", sleeve: { hardness: 180 } });
  for (const style of ["aramid-filament", "aramid-spun", "aramid-corner-hybrid"])
    expect(stopsOf(found, style), style).toEqual(["sleeve-hardness"]);
  expect(found.rejected.find(({ style }) => style === "aramid-filament")?.binding).toMatchObject({
    constraint: "sleeve-hardness",
    compared: { given: 180, limit: 250, margin: -70 },
    citation: { source: "neale-1995" },
  });
  const reasons = found.ranked.find(({ style }) => style === "ramie-flax-ptfe")?.because ?? [];
  expect(reasons.some(({ kind, says }) => kind === "warn" && says.id === "sleeve-below-floor")).toBe(true);
});

test("a soft sleeve is known by its material when its hardness is not", () => {
  expect(stopsOf(chosen({ motion: "turning", sleeve: { material: "hard-bronze" } }), "aramid-filament")).toEqual(["sleeve-hardness"]);
  expect(stopsOf(chosen({ motion: "turning", sleeve: { material: "tungsten-carbide" } }), "aramid-filament")).toEqual([]);
});

// Swedish pump handbook: ordinary lubricants to 125 °C and pH 5 to 10.
test("greased packing ends at pH 5 and 10", () => {
  for (const pH of [4.9, 10.1]) {
    const found = chosen({ motion: "turning", pH });
    for (const style of ["jute-flax-grease", "cotton", "injectable"]) expect(stopsOf(found, style), `${style} at ${pH}`).toContain("ph");
  }
  expect(stopsOf(chosen({ motion: "turning", pH: 7 }), "jute-flax-grease")).toEqual([]);
});

// The same handbook: a lubricant of that kind ends at 125 °C in any fibre.
test("the lubricant that an item is said to have brings its own limits with it", () => {
  const at = (temperature: number, pH: number, lubricant: string) => {
    const items = [{ style: "eg-braid", lubricant }];
    return stopsOf(
      chosen({ motion: "turning", fluids: ["cold-industrial-water"], temperature: celsius(temperature), pH, items }),
      "eg-braid",
    );
  };
  expect([at(124, 7, "grease"), at(126, 7, "grease"), at(124, 4.5, "grease"), at(124, 10.5, "grease")]).toEqual([
    [],
    ["temperature"],
    ["ph"],
    ["ph"],
  ]);
  expect([at(126, 4.5, "none"), at(126, 4.5, "ptfe-dispersion")]).toEqual([[], []]);
  expect(materials({ motion: "turning", items: [{ style: "eg-braid", lubricant: "butter" }] }, facts)).toMatchObject({
    ok: false,
    refusal: { input: "items[0].lubricant" },
  });
});

test("where no usual lubricant stands the fluid and the style does not state its own, it has to be asked for", () => {
  const acid = chosen({ motion: "turning", fluids: ["sulfuric-concentrated-above-70"] });
  expect(acid.ranked.find(({ style }) => style === "ptfe-lub")?.standing).toBe("ask");
  const stated = chosen({
    motion: "turning",
    fluids: ["sulfuric-concentrated-above-70"],
    items: [{ style: "ptfe-lub", lubricant: "none" }],
  });
  expect(stated.ranked.find(({ style }) => style === "ptfe-lub")?.standing).toBe("fits");
});

test("wire, die-formed and glass packings are for stems", () => {
  for (const style of ["eg-braid-wire", "eg-die", "glass-graphite"]) {
    expect(stopsOf(chosen({ motion: "turning" }), style)).toEqual(["motion"]);
    expect(stopsOf(chosen({ motion: "rising-stem" }), style)).toEqual([]);
  }
});

test("speed and pressure warn above the careful figure and stop only above the most that any sheet gives", () => {
  const at = (v: number) => chosen({ motion: "turning", fluids: ["cold-industrial-water"], speed: speed(v) });
  const kind = (v: number) =>
    at(v)
      .ranked.find(({ style }) => style === "eptfe-graphite")
      ?.because.find(({ constraint }) => constraint === "speed")?.kind;
  expect([kind(14), kind(16), kind(24.9)]).toEqual(["holds", "warn", "warn"]);
  expect(stopsOf(at(25.1), "eptfe-graphite")).toEqual(["speed"]);
  expect(at(25.1).rejected.find(({ style }) => style === "eptfe-graphite")?.binding.compared?.limit).toBe(15);
});

test("the sheet of the item in stock goes before the general figure", () => {
  const service: Service = { motion: "turning", fluids: ["cold-industrial-water"], speed: speed(11.5) };
  const warned = (items: Service["items"]) =>
    chosen({ ...service, ...(items ? { items } : {}) })
      .ranked.find(({ style }) => style === "acrylic-ptfe")
      ?.because.find(({ constraint }) => constraint === "speed");
  expect(warned(undefined)?.kind).toBe("warn");
  expect(warned([{ style: "acrylic-ptfe", sheet: "sheet 4", speed: speed(12) }])).toMatchObject({
    kind: "holds",
    citation: { source: "item-sheet" },
  });
  expect(stopsOf(chosen({ ...service, items: [{ style: "acrylic-ptfe", speed: speed(11) }] }), "acrylic-ptfe")).toEqual(["speed"]);
});

test("a limit that nobody gives never passes in silence", () => {
  const steam = chosen({ motion: "rising-stem", fluids: ["saturated-steam"], temperature: celsius(140) });
  const novoloid = steam.ranked.find(({ style }) => style === "novoloid");
  expect(novoloid?.standing).toBe("ask");
  expect(novoloid?.because.some(({ kind, constraint }) => kind === "ask" && constraint === "temperature")).toBe(true);
});

test("a no from memory gives way to the item's own chart, on record; a no that was read does not", () => {
  const item = { sheet: "chart of the maker, page 2", recordedBy: "stores" };
  const memory: Service = { motion: "turning", fluids: ["nitric-dilute-below-20"] };
  expect(stopsOf(chosen(memory), "aramid-spun")).toEqual(["chemistry"]);
  const lifted = chosen({ ...memory, items: [{ ...item, style: "aramid-spun", suits: ["nitric-dilute-below-20"] }] });
  expect(lifted.ranked.find(({ style }) => style === "aramid-spun")?.because).toContainEqual(
    expect.objectContaining({
      kind: "warn",
      says: { id: "chemistry-overridden", with: { fluid: "nitric-dilute-below-20", sheet: item.sheet, by: "stores" } },
    }),
  );
  const read = chosen({
    motion: "turning",
    fluids: ["nitric-concentrated"],
    items: [{ ...item, style: "eg-braid", suits: ["nitric-concentrated"] }],
  });
  expect(stopsOf(read, "eg-braid")).toContain("chemistry");
  const unsaid = chosen({ ...memory, items: [{ style: "aramid-spun", suits: ["nitric-dilute-below-20"] }] });
  expect(stopsOf(unsaid, "aramid-spun")).toEqual(["chemistry"]);
});

test("where the product may not be let out, packing wetted by it is refused as a whole", () => {
  const service: Service = { motion: "turning", fluids: ["hydrocarbon-fuels-light"], release: "not-allowed" };
  expect(chosen({ ...service, film: "product" }).ranked).toEqual([]);
  expect(warningsOf({ ...service, film: "product" })).toContain("packing-refused-here");
  expect(chosen({ ...service, film: "flush-to-closed-drain" }).ranked.length).toBeGreaterThan(0);
  expect(warningsOf(service)).toContain("release-film-not-said");
  expect(chosen({ ...service, motion: "rising-stem", film: "product" }).ranked.length).toBeGreaterThan(0);
});

test("gas is warned of: it passes through a braid and does not wet the rings", () => {
  const service: Service = { motion: "turning", fluids: ["inert-gas-hydrogen"] };
  expect(warningsOf(service)).toContain("gas-on-a-turning-shaft");
  const braid = chosen(service).ranked.find(({ style }) => style === "ptfe-lub");
  expect(braid?.because.some(({ says }) => says.id === "gas-passes-the-braid")).toBe(true);
  expect(warningsOf({ motion: "turning", fluids: ["cold-industrial-water"] })).not.toContain("gas-on-a-turning-shaft");
});

test("on a worn sleeve what follows the shaft goes up and what is stiff is warned of", () => {
  const at = (overall: "good" | "poor") => chosen({ motion: "turning", fluids: ["river-silt-water"], condition: { overall } });
  const place = (overall: "good" | "poor", id: string) => ids(at(overall).ranked).indexOf(id);
  expect(place("poor", "ramie-flax-ptfe") - place("poor", "aramid-filament")).toBeLessThan(
    place("good", "ramie-flax-ptfe") - place("good", "aramid-filament"),
  );
  expect(warningsOf({ motion: "turning", condition: { overall: "poor" } })).toContain("cheapest-until-repaired");
});

test("what is not known is named", () => {
  expect(warningsOf({ motion: "turning" })).toEqual(
    expect.arrayContaining([
      "material-without-fluids",
      "material-without-temperature",
      "material-without-pressure",
      "material-without-speed",
      "material-without-sleeve",
    ]),
  );
});

test("a braid over rubber is judged by its jacket and its rubber", () => {
  const service: Service = { motion: "slow-agitator", fluids: ["lubricating-hydraulic-oil"], temperature: celsius(60) };
  expect(chosen(service).ranked.find(({ style }) => style === "elastomer-core")?.standing).toBe("ask");
  const core = (rubber: string) => chosen({ ...service, items: [{ style: "elastomer-core", jacket: "acrylic-ptfe", rubber }] });
  expect(stopsOf(core("epdm"), "elastomer-core")).toEqual(["rubber"]);
  expect(ids(core("nbr").ranked)).toContain("elastomer-core");
  expect(
    stopsOf(chosen({ ...service, temperature: celsius(110), items: [{ style: "elastomer-core", rubber: "nbr" }] }), "elastomer-core"),
  ).toContain("rubber");
});

test("the input that need only be a tenth wrong is named", () => {
  const found = chosen({ motion: "turning", fluids: ["cold-industrial-water"], temperature: celsius(95), speed: speed(3) });
  expect(found.sensitive.find(({ input }) => input === "temperature")?.lost).toContain("ramie-flax-ptfe");
});

test("ids may be written with capitals, spaces and underscores; an id that is not there is refused with those that are", () => {
  const loose = chosen({ motion: "turning", fluids: ["Sulfuric_concentrated above 70"] });
  expect(stopsOf(loose, "aramid-spun")).toEqual(["chemistry"]);
  expect(materials({ motion: "turning", fluids: ["treacle"] }, facts)).toMatchObject({
    ok: false,
    refusal: { kind: "not-known", input: "fluids[0]", given: "treacle" },
  });
  expect(materials({ motion: "turning", sleeve: { material: "butter" } }, facts)).toMatchObject({
    ok: false,
    refusal: { input: "sleeve.material" },
  });
  expect(materials({ motion: "turning", items: [{ style: "hemp" }] }, facts)).toMatchObject({
    ok: false,
    refusal: { input: "items[0].style" },
  });
});

test("numbers that cannot be are refused by name", () => {
  for (const [service, input] of [
    [{ temperature: Number.NaN }, "temperature"],
    [{ temperature: -5 }, "temperature"],
    [{ pressure: 1e12 }, "pressure"],
    [{ speed: -1 }, "speed"],
    [{ pH: 20 }, "pH"],
    [{ sleeve: { hardness: 0 } }, "sleeve.hardness"],
    [{ condition: { throatGap: Number.NaN } }, "condition.throatGap"],
    [{ items: [{ style: "ptfe-dry", speed: Number.POSITIVE_INFINITY }] }, "items[0].speed"],
  ] as const) {
    expect(materials({ motion: "turning", ...(service as object) }, facts)).toMatchObject({
      ok: false,
      refusal: { kind: "outside-range", input },
    });
  }
});
