import { createServer } from "node:net";
import type { Facts } from "@ringwright/answers";
import type { Says } from "@ringwright/core/workings";
import { open, type Store, StoreFault } from "@ringwright/store";
import type { FastifyInstance } from "fastify";
import { buildServer } from "../app.ts";
import { openBrowser } from "./browser.ts";
import { type Choices, choicesIn } from "./choices.ts";
import { loadDemo } from "./first-run.ts";

/** What a start is given by whoever starts. */
export interface Start {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly facts: Facts;
  /** Folder where the built app is, if it has been built. */
  readonly appFolder: string;
  readonly browser: boolean;
  readonly now: () => number;
  say(says: Says): void;
  complain(says: Says): void;
}

/** A server that runs, until it is stopped. */
export interface Running {
  readonly address: string;
  stop(): Promise<void>;
}

/** How a start ended: with a server, or with the exit code of a start that had nothing more to do. */
export type Started = Running | { readonly exit: number };

/** Opens the store, listens on this machine only, and says where. Nothing is left open when it can't. */
export async function start(given: Start): Promise<Started> {
  const choices = choicesIn(given.env);
  if ("id" in choices) return refuse(given, choices);
  const port = choices.port === 0 ? await freePort() : choices.port;
  const address = `http://127.0.0.1:${port}`;
  let store: Store;
  try {
    store = await open(choices.where, { address });
  } catch (fault) {
    return refuseStore(given, choices, fault);
  }
  const app = buildServer({ store, facts: given.facts, now: given.now, appFolder: given.appFolder });
  const stop = async () => {
    await app.close();
    await store.close();
  };
  // Before anybody can ask: an app that finds no site would make one of its own.
  const first = await loadDemo(store, given.facts, given.now());
  try {
    await listen(app, port);
  } catch (fault) {
    await stop();
    return refuse(given, portFault(fault, port));
  }
  const health = await fetch(`${address}/healthz`);
  if (!health.ok) throw new Error(`the server answers ${health.status} to its own question`);
  given.say({ id: choices.database ? "start-running-database" : "start-running", with: { address, where: choices.shown } });
  if (first) given.say({ id: "start-demo" });
  given.say({ id: "start-stop" });
  if (given.browser) openBrowser(address, given.env);
  return { address, stop };
}

function refuse(given: Start, says: Says): Started {
  given.complain(says);
  return { exit: 1 };
}

function refuseStore(given: Start, { shown }: Choices, fault: unknown): Started {
  if (!(fault instanceof StoreFault)) throw fault;
  const { address } = fault.shown;
  if (fault.id !== "store-in-use") return refuse(given, { id: `start-${fault.id}`, with: { where: shown } });
  if (!address) return refuse(given, { id: "start-store-in-use", with: { where: shown } });
  // Whoever starts twice has what they want.
  given.say({ id: "start-already", with: { address, where: shown } });
  if (given.browser) openBrowser(address, given.env);
  return { exit: 0 };
}

async function listen(app: FastifyInstance, port: number): Promise<void> {
  await app.listen({ host: "127.0.0.1", port });
}

function portFault(fault: unknown, port: number): Says {
  const code = fault instanceof Error && "code" in fault ? fault.code : undefined;
  if (code === "EADDRINUSE")
    return { id: "start-port-taken", with: { port: String(port), other: String(port < 65_535 ? port + 1 : port - 1) } };
  if (code === "EACCES") return { id: "start-port-forbidden", with: { port: String(port) } };
  throw fault;
}

/** A port that nobody listens on. */
function freePort(): Promise<number> {
  return new Promise((found, failed) => {
    const probe = createServer();
    probe.once("error", failed);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() => (typeof address === "object" && address ? found(address.port) : failed(new Error("no port"))));
    });
  });
}
