import { defineConfig } from "vitest/config";

/** Whole cases in a real browser, one after the other. */
export default defineConfig({
  test: {
    environment: "node",
    include: ["test/journeys/**/*.journey.ts"],
    globalSetup: "test/journeys/home-with-demo.ts",
    fileParallelism: false,
    testTimeout: 900_000,
    hookTimeout: 120_000,
    // A page is waited for as long as a slow machine needs it; what is there at once is seen at once.
    expect: { poll: { timeout: 20_000, interval: 40 } },
  },
});
