import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { injected, type Served, served } from "../testing/asked.ts";

let folder: string;
let server: Served;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "ringwright-app-"));
  mkdirSync(join(folder, "dist", "assets"), { recursive: true });
  writeFileSync(join(folder, "secret.txt"), "not for anybody");
  writeFileSync(join(folder, "dist", "index.html"), "<!doctype html><title>The app</title>");
  writeFileSync(join(folder, "dist", "assets", "index-AbCdEf12.js"), "export {};");
  server = await served(join(folder, "dist"));
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

test("paths without a dot are pages of the app; its files come with their type", async () => {
  for (const url of ["/", "/boxes", "/boxes/0191/fit?step=2", "/a/b/c"])
    expect(await injected(server.app, { url }), url).toMatchObject({
      status: 200,
      type: "text/html; charset=utf-8",
      text: expect.stringContaining("The app"),
    });
  const script = await injected(server.app, { url: "/assets/index-AbCdEf12.js" });
  expect(script).toMatchObject({ status: 200, type: "text/javascript; charset=utf-8" });
  expect(script.headers["cache-control"]).toContain("immutable");
  const page = await injected(server.app, { url: "/" });
  expect(page.headers["cache-control"]).toBe("no-cache");
  expect(await injected(server.app, { url: "/", headers: { "if-none-match": String(page.headers.etag) } })).toMatchObject({
    status: 304,
    text: "",
  });
});

test("no path leads out of the folder, and what is not there is a problem", async () => {
  for (const url of [
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/assets/../../secret.txt",
    "/assets/%2e%2e%2f%2e%2e%2fsecret.txt",
    "/..\\secret.txt",
    "/secret.txt",
    "/missing.js",
    "/api/x",
    "/docs/x",
    "/healthz/x",
  ]) {
    const { status, text } = await injected(server.app, { url });
    expect(status, url).toBe(404);
    expect(text).not.toContain("not for anybody");
  }
});

test("until the app is built, a plain page says so", async () => {
  const bare = await served(join(folder, "nowhere"));
  expect(await injected(bare.app, { url: "/" })).toMatchObject({
    status: 200,
    type: "text/html; charset=utf-8",
    text: expect.stringContaining('href="/docs"'),
  });
  expect(await injected(bare.app, { url: "/boxes" })).toMatchObject({ status: 404 });
  await bare.close();
});
