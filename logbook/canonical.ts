import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";
import type { Entry, Json } from "./entry.ts";

/** An entry as canonical JSON (RFC 8785): the text whose UTF-8 bytes are its truth. */
export function canonicalText(json: Json | Entry): string {
  return canonicalize(json) ?? "null";
}

/** The bytes of a canonical text. */
export function canonicalBytes(entry: Entry): Uint8Array {
  return utf8ToBytes(canonicalText(entry));
}

/** SHA-256 of bytes, in hexadecimal. */
export function hashOf(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}
