import { defineConfig } from "vitest/config";

const conditions = ["source", "module", "node", "development|production"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    include: ["{core,data,words,answers,drawings,cli,bench,scripts}/**/*.test.ts"],
    exclude: ["**/node_modules/**", "**/dist/**"],
  },
});
