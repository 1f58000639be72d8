import { defineConfig } from "vitest/config";

/** The studies of accuracy and coverage: `npm run study`. Each writes its table to docs/studies/. */
export default defineConfig({
  test: {
    environment: "node",
    include: ["test/studies/**/*.study.ts"],
    testTimeout: 3_600_000,
  },
});
