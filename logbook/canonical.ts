import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";
import type { Entry, Json } from "./entry.ts";

/** An entry as canonical JSON (RFC 8785): the text whose UTF-8 bytes are its truth. */
export function canonicalText(json: Json | Entry): string {
  if (inOrder(json)) {
    // RFC 8785 takes its texts and numbers from this very function of the language, and nearly everything comes in order.
    const text = JSON.stringify(json);
    // But half a surrogate pair, which canonical JSON has not, is written as \ud800.
    if (!text.includes("\\ud")) return text;
  }
  return canonicalize(json) ?? "null";
}

/** Whether all names stand in the order of RFC 8785, and all numbers are such as JSON has. */
function inOrder(json: unknown): boolean {
  if (typeof json === "number") return Number.isFinite(json);
  if (typeof json !== "object" || json === null) return true;
  if (Array.isArray(json)) return json.every(inOrder);
  let before = "";
  for (const name of Object.keys(json)) {
    if (name < before || !inOrder((json as { readonly [name: string]: unknown })[name])) return false;
    before = name;
  }
  return true;
}

/** The bytes of a canonical text. */
export function canonicalBytes(entry: Entry): Uint8Array {
  return utf8ToBytes(canonicalText(entry));
}

/** SHA-256 of bytes, in hexadecimal. */
export function hashOf(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}
