import { type Signal, signal } from "@preact/signals";
import type { UnitSystem } from "@ringwright/core/units";
import type { Storage } from "../device/storage.ts";

/** How large what is touched is: a bare hand, or gloves. */
export type Hands = "bare" | "gloves";

/** How the reader likes things shown on this device. What was measured never changes with it. */
export class Preferences {
  readonly units: Signal<UnitSystem>;
  readonly hands: Signal<Hands>;
  readonly #storage: Storage;

  private constructor(storage: Storage, units: UnitSystem, hands: Hands) {
    this.#storage = storage;
    this.units = signal(units);
    this.hands = signal(hands);
  }

  static async open(storage: Storage): Promise<Preferences> {
    const [units, hands] = await Promise.all([storage.get("settings", "units"), storage.get("settings", "hands")]);
    return new Preferences(storage, units === "inch" ? "inch" : "metric", hands === "gloves" ? "gloves" : "bare");
  }

  async keepUnits(units: UnitSystem): Promise<void> {
    this.units.value = units;
    await this.#storage.put("settings", units, "units");
  }

  async keepHands(hands: Hands): Promise<void> {
    this.hands.value = hands;
    await this.#storage.put("settings", hands, "hands");
  }
}
