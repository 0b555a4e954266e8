import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { root } from "../root.ts";

const program = fileURLToPath(new URL("cli/bin/ringwright.js", root));

/** The real server with the built app, on a port and a data folder of its own. */
export class Served {
  readonly folder = mkdtempSync(join(tmpdir(), "ringwright-served-"));
  #child: ChildProcess | undefined;
  #address = "";

  /** Where it answers; the same again after `start` if the port is still free. */
  get address(): string {
    return this.#address;
  }

  /** Starts it, or starts it again on the same folder and port. */
  async start(): Promise<this> {
    const port = this.#address === "" ? "0" : new URL(this.#address).port;
    const { DATABASE_URL: _, ...env } = process.env;
    const child = spawn(process.execPath, [program, "serve"], {
      env: { ...env, PORT: port, RINGWRIGHT_DATA: this.folder, CI: "true" },
      stdio: ["ignore", "pipe", "pipe"],
    });
    this.#child = child;
    this.#address = await new Promise<string>((resolve, reject) => {
      let said = "";
      const hear = (data: Buffer) => {
        said += String(data);
        const [address] = /http:\/\/127\.0\.0\.1:\d+/u.exec(said) ?? [];
        if (address) resolve(address);
      };
      child.stdout.on("data", hear);
      child.stderr.on("data", hear);
      child.once("exit", (code) => reject(new Error(`the server stopped with ${code}: ${said}`)));
    });
    return this;
  }

  /** Stops it: politely, or as a power cut would. */
  async stop(signal: "SIGTERM" | "SIGKILL" = "SIGTERM"): Promise<void> {
    const child = this.#child;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const gone = new Promise((resolve) => child.once("exit", resolve));
    child.kill(signal);
    await gone;
  }

  /** Stops it and removes its folder. */
  async remove(): Promise<void> {
    await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
