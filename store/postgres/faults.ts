import { StoreFault } from "../store.ts";

/** Beginnings of SQLSTATE codes (PostgreSQL documentation, appendix A) and of Node's own. */
const ids: readonly (readonly [beginning: RegExp, id: StoreFault["id"]])[] = [
  [/^53100$/u, "store-full"],
  [/^(?:42501|25006)$/u, "store-unwritable"],
  [/^(?:08|28|53|57P|3D)/u, "store-unreachable"],
  [/^(?:XX001|XX002)$/u, "store-damaged"],
  [/^E[A-Z]+$/u, "store-unreachable"],
];
const lost = /connection (?:terminated|ended|timeout)|timeout exceeded when trying to connect|not queryable|server does not support ssl/iu;

/** A fault of PostgreSQL or of the network in our ids; what is neither stays what it is. */
export function faultOfServer(address: string, fault: unknown): unknown {
  if (fault instanceof StoreFault || !(fault instanceof Error)) return fault;
  const code = "code" in fault && typeof fault.code === "string" ? fault.code : "";
  const id = ids.find(([beginning]) => beginning.test(code))?.[1] ?? (lost.test(fault.message) ? "store-unreachable" : undefined);
  return id ? new StoreFault(id, { address }, { cause: fault }) : fault;
}
