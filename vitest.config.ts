import { defineConfig } from "vitest/config";

const conditions = ["source", "module", "node", "development|production"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    // A slow machine is not a fault: tests assert counts, never seconds.
    testTimeout: 120_000,
    include: ["{core,data,words,answers,drawings,logbook,app,cli,bench,scripts}/**/*.test.ts"],
    exclude: ["**/node_modules/**", "**/dist/**"],
  },
});
