import fc from "fast-check";
import { expect } from "vitest";
import { allOf, boxes, chance, Device, doAnything, exchange, pick, shuffled, stateText, wildClock } from "../../testing/devices.ts";
import { property } from "../../testing/property.ts";

const replicas = 5;
const operations = 200;

property(
  "five tablets with wrong clocks, cut off from each other at random, end alike once all has come through",
  [fc.integer({ min: 0, max: 2 ** 31 - 1 })],
  (seed) => {
    const random = chance(seed);
    const devices = Array.from({ length: replicas }, (_, number) => {
      const wild = wildClock(chance(seed + number));
      const [steady, jumps] = [wild(), random() < 0.3];
      return new Device(number, chance(seed * 17 + number), () => Date.UTC(2031, 0, 1) + (jumps ? wild() : steady));
    });
    // Who can reach whom: drawn anew from time to time.
    let reach = devices.map(() => 0);
    for (let operation = 0; operation < replicas * operations; operation++) {
      if (operation % 50 === 0) reach = devices.map(() => Math.floor(random() * 3));
      const at = Math.floor(random() * replicas);
      const device = devices[at] as Device;
      if (random() < 0.8) doAnything(device, random);
      else
        exchange(
          pick(
            devices.filter((_, other) => reach[other] === reach[at]),
            random,
          ),
          device,
          random,
        );
    }
    const all = allOf(devices);
    for (const device of devices) device.take(shuffled([...all, ...all.filter(() => random() < 0.1)], random));
    for (const box of boxes) {
      const [first, ...others] = devices.map(({ book }) => stateText(book.state(box)));
      for (const other of others) expect(other).toBe(first);
    }
    for (const { book } of devices) expect(book.size).toBe(all.length);
  },
  "sync",
);
