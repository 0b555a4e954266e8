import { defineConfig } from "vite";

// `device`: the words come in two pieces (words/package.json).
const conditions = ["device", "source", "module", "browser", "development|production"];

export default defineConfig({
  root: import.meta.dirname,
  resolve: { conditions },
  json: { stringify: true },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    target: ["chrome111", "firefox115", "safari16.4"],
    // Every font file stays a file: the page may then say that styles and fonts come from here only.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    manifest: true,
  },
  server: { proxy: { "/api": "http://127.0.0.1:4747", "/healthz": "http://127.0.0.1:4747" } },
});
