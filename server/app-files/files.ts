import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { extname, join, relative, sep } from "node:path";

/** One file of the built app, ready to send. */
export interface AppFile {
  readonly type: string;
  readonly content: Uint8Array;
  readonly etag: string;
  /** Named after what is in it, so that it never changes. */
  readonly lasting: boolean;
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".svg": "image/svg+xml; charset=utf-8",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".txt": "text/plain; charset=utf-8",
};

/** Every file of a folder by its path. Only what is listed here is ever sent, so that no path leads out of the folder. */
export function appFiles(folder: string): ReadonlyMap<string, AppFile> {
  if (!existsSync(join(folder, "index.html"))) return new Map();
  return new Map(
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .map((name) => join(folder, name))
      .filter((path) => statSync(path).isFile())
      .map((path): readonly [string, AppFile] => {
        const name = `/${relative(folder, path).split(sep).join("/")}`;
        const content = readFileSync(path);
        return [
          name,
          {
            type: types[extname(name)] ?? "application/octet-stream",
            content,
            etag: `"${createHash("sha256").update(content).digest("base64url")}"`,
            lasting: /-[\w-]{8,}\.[a-z\d]+$/iu.test(name) && name.startsWith("/assets/"),
          },
        ];
      }),
  );
}
