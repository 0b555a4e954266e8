import { type Signal, signal } from "@preact/signals";
import type { UnitSystem } from "@ringwright/core/units";
import type { Storage } from "../device/storage.ts";

/** How large what is touched is: a bare hand, or gloves. */
export type Hands = "bare" | "gloves";

/** Which keys write a number: the app's own, or those that the device brings. */
export type Keys = "own" | "device";

/** The paper that this device prints on. */
export type Paper = "a4" | "letter";

/** How the reader likes things shown on this device. What was measured never changes with it. */
export class Preferences {
  readonly units: Signal<UnitSystem>;
  readonly hands: Signal<Hands>;
  readonly keys: Signal<Keys>;
  readonly paper: Signal<Paper>;
  readonly #storage: Storage;

  private constructor(storage: Storage, units: UnitSystem, hands: Hands, keys: Keys, paper: Paper) {
    this.#storage = storage;
    this.units = signal(units);
    this.hands = signal(hands);
    this.keys = signal(keys);
    this.paper = signal(paper);
  }

  static async open(storage: Storage): Promise<Preferences> {
    const [units, hands, keys, paper] = await Promise.all(["units", "hands", "keys", "paper"].map((name) => storage.get("settings", name)));
    return new Preferences(
      storage,
      units === "inch" ? "inch" : "metric",
      hands === "gloves" ? "gloves" : "bare",
      keys === "device" ? "device" : "own",
      paper === "letter" ? "letter" : "a4",
    );
  }

  async keepUnits(units: UnitSystem): Promise<void> {
    this.units.value = units;
    await this.#storage.put("settings", units, "units");
  }

  async keepHands(hands: Hands): Promise<void> {
    this.hands.value = hands;
    await this.#storage.put("settings", hands, "hands");
  }

  async keepKeys(keys: Keys): Promise<void> {
    this.keys.value = keys;
    await this.#storage.put("settings", keys, "keys");
  }

  async keepPaper(paper: Paper): Promise<void> {
    this.paper.value = paper;
    await this.#storage.put("settings", paper, "paper");
  }
}
