import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Child, startProgram } from "../child.ts";

/** The real server with the built app, on a port and a data folder of its own. */
export class Served {
  readonly folder = mkdtempSync(join(tmpdir(), "ringwright-served-"));
  #child: Child | undefined;
  #address = "";

  /** Where it answers; the same again after `start` if the port is still free. */
  get address(): string {
    return this.#address;
  }

  /** Starts it, or starts it again on the same folder and port. */
  async start(): Promise<this> {
    const PORT = this.#address === "" ? "0" : new URL(this.#address).port;
    const child = startProgram(["serve"], { PORT, RINGWRIGHT_DATA: this.folder, CI: "true" });
    this.#child = child;
    await child.lines(1);
    const [address] = /http:\/\/127\.0\.0\.1:\d+/u.exec(child.said.join("\n")) ?? [];
    if (!address) throw new Error(`the server did not start: ${child.complaints()}`);
    this.#address = address;
    return this;
  }

  /** Stops it: politely, or as a power cut would. */
  async stop(how: "asked" | "killed" = "asked"): Promise<void> {
    if (how === "killed") await this.#child?.kill();
    else this.#child?.process.kill("SIGTERM");
    await this.#child?.ended;
  }

  /** Stops it and removes its folder. */
  async remove(): Promise<void> {
    await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
