import { type AddressInfo, connect } from "node:net";
import { afterAll, beforeAll, expect, test } from "vitest";
import { injected, type Served, served } from "../testing/asked.ts";

let server: Served;
let port: number;
beforeAll(async () => {
  server = await served();
  await server.app.listen({ host: "127.0.0.1", port: 0 });
  port = (server.app.server.address() as AddressInfo).port;
});
afterAll(() => server.close());

const question = { shaft: "50 mm", rotation: "1450 rpm" };
const path = "/api/v1/answers/surface-speed";

test("only this machine's own names are answered", async () => {
  for (const host of ["localhost", "localhost:4747", "127.0.0.1:4747", "[::1]:4747", "LOCALHOST:80"])
    expect(await server.ask("GET", "/healthz", undefined, { host }), host).toMatchObject({ status: 200 });
  for (const host of [
    "mill.example",
    "localhost.mill.example",
    "127.0.0.1.mill.example",
    "192.168.1.7:4747",
    "localhost:4747@mill.example",
    "127.0.0.2",
    "::1",
    " ",
  ])
    expect(await server.ask("GET", "/healthz", undefined, { host }), host).toMatchObject({
      status: 421,
      json: { refusal: { input: "host" } },
    });
  expect(await server.ask("GET", "/", undefined, { host: "mill.example" })).toMatchObject({ status: 421 });
});

test("another page may not send anything, and no page is told that it may read", async () => {
  const host = "127.0.0.1:4747";
  for (const headers of [
    { origin: "http://mill.example" },
    { origin: "null" },
    { origin: "https://127.0.0.1:4747" },
    { origin: "http://127.0.0.1:9999" },
    { origin: "http://localhost:4747" },
    { "sec-fetch-site": "cross-site" },
  ])
    expect(await server.ask("POST", path, question, { host, ...headers }), JSON.stringify(headers)).toMatchObject({ status: 403 });
  for (const headers of [{ origin: "http://127.0.0.1:4747" }, { "sec-fetch-site": "same-origin" }, {}])
    expect(await server.ask("POST", path, question, { host, ...headers })).toMatchObject({ status: 200 });
  const { headers } = await server.ask("GET", "/api/v1/answers", undefined, { host, origin: "http://mill.example" });
  expect(Object.keys(headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
});

test("every reply carries the same guards, whatever it is", async () => {
  for (const url of ["/", "/docs", "/docs/page.css", "/healthz", "/api/v1/openapi.json", "/nothing.here", "/api/v1/nothing", "/%zz"]) {
    const { headers } = await injected(server.app, { url });
    expect(headers, url).toMatchObject({ "x-content-type-options": "nosniff", "referrer-policy": "no-referrer" });
    const policy = String(headers["content-security-policy"]);
    for (const rule of ["default-src 'self'", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'"])
      expect(policy).toContain(rule);
    expect(policy).not.toContain("unsafe");
  }
});

test("what is not there, not allowed or not JSON is a problem each time", async () => {
  for (const [method, url, status] of [
    ["GET", "/api/v1/nothing", 404],
    ["GET", "/nothing.js", 404],
    ["GET", "/api", 404],
    ["GET", "/%zz", 400],
    ["DELETE", path, 405],
    ["PUT", "/healthz", 405],
    ["PATCH", "/api/v1/people", 405],
    ["OPTIONS", path, 405],
  ] as const) {
    const reply = await injected(server.app, { method, url });
    expect(reply, `${method} ${url}`).toMatchObject({
      status,
      type: "application/problem+json; charset=utf-8",
      json: { ok: false, status },
    });
    if (status === 405) expect(reply.headers.allow).toBeDefined();
  }
  for (const type of [
    "text/plain",
    "application/x-www-form-urlencoded",
    "multipart/form-data; boundary=x",
    "application/json; charset=utf-16",
    "",
    "noise",
  ])
    expect(await server.ask("POST", path, JSON.stringify(question), { "content-type": type }), type).toMatchObject({ status: 415 });
  expect(await server.ask("POST", path, `"${"x".repeat(1_048_576)}"`)).toMatchObject({ status: 413 });
});

/** What comes back for bytes that are sent as they are. */
function raw(text: string): Promise<string> {
  return new Promise((done, failed) => {
    let seen = "";
    const socket = connect(port, "127.0.0.1", () => socket.end(text));
    socket.setEncoding("utf8");
    socket.on("data", (part: string) => {
      seen += part;
    });
    socket.on("end", () => done(seen));
    socket.on("error", failed);
  });
}

test("what is no HTTP is answered with a problem on the bare connection, and the server goes on", async () => {
  for (const [text, status] of [
    ["noise\r\n\r\n", 400],
    ["GET /healthz HTTP/1.1\r\nConnection: close\r\n\r\n", 421],
    ["GET /healthz HTTP/1.0\r\n\r\n", 421],
    [`GET /healthz HTTP/1.1\r\nHost: localhost\r\nX: ${"x".repeat(40_000)}\r\n\r\n`, 431],
    ["POST /api/v1/people HTTP/1.1\r\nHost: localhost\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n", 400],
  ] as const) {
    const reply = await raw(text);
    expect(reply, text.slice(0, 60)).toMatch(new RegExp(`^HTTP/1.1 ${status} `, "u"));
    expect(reply.toLowerCase()).toContain("content-type: application/problem+json");
    expect(JSON.parse(reply.slice(reply.indexOf("\r\n\r\n") + 4))).toMatchObject({ ok: false, status });
  }
  for (const head of ["", "Expect: a-miracle\r\n"])
    expect(await raw(`GET /healthz HTTP/1.1\r\nHost: localhost\r\n${head}Connection: close\r\n\r\n`)).toMatch(/^HTTP\/1.1 200 /u);
});

test("over a real connection the same question gets the same reply", async () => {
  const address = `http://127.0.0.1:${port}`;
  const reply = await fetch(`${address}${path}`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(question),
  });
  expect(reply.status).toBe(200);
  expect(await reply.json()).toEqual((await server.ask("POST", path, question)).json);
});
