import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

const conditions = ["source", "module", "node", "development|production"];
/** As many as there are cores: by itself a run leaves one of two idle. */
const maxWorkers = availableParallelism();
const exclude = ["**/node_modules/**", "**/dist/**"];
const onPostgres = ["server/start/database.test.ts"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    // A slow machine is not a fault: tests assert counts, never seconds.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: "pure",
          maxWorkers,
          include: ["{core,data,words,answers,drawings,logbook,card,demo,server,app,cli,bench,scripts}/**/*.test.ts"],
          exclude: [...exclude, ...onPostgres],
        },
      },
      {
        extends: true,
        test: {
          name: "kept",
          maxWorkers,
          include: ["store/**/*.test.ts", ...onPostgres],
          exclude,
          // A PostgreSQL server, only when one of these tests is to run.
          globalSetup: "testing/postgres/server.ts",
        },
      },
      {
        extends: true,
        test: {
          name: "walks",
          include: ["walks/**/*.test.ts"],
          exclude,
          // A browser, only when one of these tests is to run; one file at a time, so that pages are not starved.
          globalSetup: "testing/browser/setup.ts",
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
