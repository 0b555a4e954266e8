/** Sentences of this topic, by id. */
export const cautionsSentences: Readonly<Record<string, string>> = {
  "caution-turning-shaft":
    "The shaft turns. Guard on, nothing loose, no gloves near it, nobody reaches past it. If the guard has to come off: stop and lock first. Emery only on a locked shaft, turned by hand.",
  "caution-moving-rod":
    "The rod strokes. Keep hands and tools out of the space between gland and crosshead. Nobody reaches past the guard. If it has to come off: stop and lock first.",
  "caution-live-stem":
    "Never repack a stem under pressure. Tightening a live stem: face and hands to one side of it, and stop if it answers with more leak.",
  "caution-backseat":
    "The backseat is no isolation. Stems held on it have broken and their nuts have stripped. Prove zero by a vent on the stem side.",
  "caution-devices-outside":
    "Ordinary devices stay outside: no phone, no tablet, no camera, no ordinary lamp or thermometer. Take the card; enter the readings afterwards.",
  "caution-stored-energy":
    "Pressure hides: suction, discharge, flush, quench, grease, heat, a rotor that can turn. Lock each, let it down, prove zero at the box, and prove it again whenever it could have built up.",
  "caution-back-spin":
    "A draining riser or a discharge valve that passes can turn the shaft with the motor locked off. Hold the rotor before a hand goes in.",
  "caution-trapped-flush":
    "Flush, quench and grease lines feed the lantern ring by themselves. Close and bleed each. Pressure can stay in the lantern ring after the casing is drained.",
  "caution-heating-live": "Jacket or tracing keeps heating with the pump off: shut it off and lock it too.",
  "caution-vessel-entry":
    "A mixer hangs in a vessel. Shaft held before the seal is opened; vessel entry only on an entry permit with a rescue plan; nitrogen cannot be smelt.",
  "caution-hanging-shaft": "The shaft hangs or stands: hold it before the box is opened, so that it can neither fall nor tilt.",
  "caution-product-not-known":
    "Not known: what is in the box, how hot it is, or whether it burns or poisons. Ask and read its data sheet before a nut is moved.",
  "caution-toxic-product":
    "The product poisons. It stays behind the rings and in the lantern line after draining. Breathing and skin protection as the site says; gas test where it says so; not alone.",
  "caution-corrosive-product":
    "The product burns skin and eyes. It stays behind the rings after draining. Face shield, apron, gloves that resist it; water for eyes within reach.",
  "caution-flammable-product":
    "The product burns. Gas test and permit before opening; no spark, no flame, tools as the zone asks. A gland that runs dry is hot enough to light it.",
  "caution-hot-product":
    "The product is hot. Let the box cool and prove it; a drained box can still hold hot liquid behind the rings that flashes to steam when let out.",
  "caution-cold-product":
    "The product is cold enough to freeze skin and make steel brittle. Let the box warm through; liquid caught between two valves bursts them.",
  "caution-setting-product":
    "The product sets. A plug can hold pressure behind it and hold the shaft. A vent that gives nothing proves nothing: rod it through from one side.",
  "caution-gas-product": "Gas or steam: a jet may not be seen or heard. Never feel for it by hand. An inert gas takes the air away.",
  "caution-smoke-flammable":
    "Smoke or squeal with a product that burns: the site's emergency rule first, before anything that is written here.",
  "caution-smoke-steam-squeal":
    "Smoke, steam or squeal: stand clear and have the operator stop it. Let it cool by itself. No water on it, and do not slacken it hot.",
  "caution-no-product-out":
    "Product may not be let out here. What leaves the gland is clean flush, to a closed drain. Product at the drain: stop and report it.",
  "caution-release-not-known":
    "Nobody has said whether what comes out may be let out here. Ask before the box is opened and before the start.",
  "caution-old-asbestos":
    "The old packing may be asbestos. Keep it wet, no dry scraping, no power brush, no air line. Bag and label it. People trained for it take it out, or a laboratory clears it first.",
  "caution-old-packing-no-record":
    "No record of what the old packing is. On ships and imported machines it may be asbestos even when it is younger: with any doubt, treat it as asbestos.",
  "caution-fluoropolymer-fume":
    "PTFE gives off poisonous fume when it burns. Never burn it, never torch it out. No smoking near it, and wash hands first. Fever or short breath hours later: see a doctor and say PTFE.",
  "caution-solvent-vapour":
    "Solvent vapour harms and burns: little of it, on a rag, with air moving, away from anything hot. Rags into a closed metal bin.",
  "caution-oxygen":
    "Oxygen: only a tested, cleaned, unlubricated lot made for it. No oil, no grease, no finger marks; clean tools, clean gloves, no dust. The oxygen specialist decides.",
  "caution-oxidising-product":
    "The product feeds fire. Graphite, plant fibre, oil and grease can burn or be eaten in it: use only what its own chemical chart allows, and no grease to help a ring in.",
  "caution-drinking-water":
    "Drinking water: packing, lubricant and grease need a listing that is valid here today. Certificate in the file; the water-quality officer decides.",
  "caution-food": "Food: packing and lubricant need a declaration for food contact. Nothing that sheds colour or grease. Quality decides.",
  "caution-graphite-on-chromium-steel":
    "Graphite left wet on 13 % chromium steel or carbon steel pits it. Do not leave it standing wet after a test or in store; ask for an inhibited grade or another shaft.",
  "caution-valve-may-stick":
    "Tight packing holds the stem. No bar on the handwheel. With an actuator: the owner decides how much friction it can take; time a full stroke afterwards.",
  "caution-mixer-bearing":
    "Vapour that passes the packing climbs the shaft and kills the lower gearbox bearing. Look up the shaft whenever you look at the box.",
  "caution-fire-pump":
    "A fire pump out of service: give the impairment notice first. Do not stop its drip. A qualified fire-pump tester decides when it is back.",
  "caution-pullers":
    "Pull with your face to one side of the gland. Keep the puller's point off the shaft: one scratch leaks as long as the sleeve lasts.",
  "caution-knife": "Cut away from yourself, the bar held in a vice, the hand behind the blade.",
  "caution-waste": "Old rings carry product: waste as the product is. Keep them in order until they have been read.",
  "caution-local-rules": "Local rules and licensed people decide.",
  "caution-not-in-list": "{input}: “{given}” is not in the lists here. It is treated as not known.",
};

/** Names of this topic, where the id is not itself the word. */
export const cautionsNames: Readonly<Record<string, string>> = {
  "burn-threshold": "temperature that burns when touched for a minute",
};
