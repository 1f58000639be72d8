import { defineConfig } from "vitest/config";

/** Whole cases in a real browser, one after the other. */
export default defineConfig({
  test: {
    environment: "node",
    include: ["test/journeys/**/*.journey.ts"],
    fileParallelism: false,
    testTimeout: 240_000,
    hookTimeout: 120_000,
  },
});
