import { bytesToHex } from "@noble/hashes/utils.js";

/**
 * A UUID of version 7 (RFC 9562, 5.7) from a time in milliseconds since 1970
 * and ten random bytes, both handed in: this package has neither clock nor chance.
 */
export function uuidv7(ms: number, random: Uint8Array): string {
  if (random.length < 10) throw new RangeError(`ten random bytes are needed, not ${random.length}`);
  const time = Math.min(2 ** 48 - 1, Math.max(0, Math.trunc(ms)))
    .toString(16)
    .padStart(12, "0");
  const chance = bytesToHex(random.subarray(0, 10));
  const variant = ((Number.parseInt(chance.slice(4, 5), 16) & 0x3) | 0x8).toString(16);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${chance.slice(1, 4)}-${variant}${chance.slice(5, 8)}-${chance.slice(8, 20)}`;
}

/** The time in a UUID of version 7, milliseconds since 1970. */
export function timeOfId(id: string): number {
  return Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);
}

/** Whether a text is a UUID as entries carry it: lower case, any version. */
export function isId(text: unknown): text is string {
  return typeof text === "string" && /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/u.test(text);
}
