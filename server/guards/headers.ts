import type { FastifyReply } from "fastify";

/** Nothing from elsewhere, nothing inline, in nobody's frame. */
const pages =
  "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
/** A drawing opened by itself may set its own type, and do nothing else. */
const drawings = "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'self'";

/** Headers that every reply carries. */
export function keepClose(reply: FastifyReply): void {
  const type = String(reply.getHeader("content-type") ?? "");
  reply.headers({
    "content-security-policy": type.startsWith("image/svg") ? drawings : pages,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "cross-origin-resource-policy": "same-origin",
    "cross-origin-opener-policy": "same-origin",
  });
  // Kept nowhere on the way, unless what was sent says otherwise.
  if (!reply.hasHeader("cache-control")) reply.header("cache-control", "no-store");
}
