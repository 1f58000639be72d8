import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    environment: "node",
    // All cores: the usual one less leaves half of a machine of two idle.
    maxWorkers: "100%",
    include: ["src/**/*.test.ts", "src/**/*.test.tsx", "test/**/*.test.ts", "scripts/**/*.test.ts"],
    // Only what hangs is ended: a loaded machine takes several times as long as a quiet one.
    testTimeout: 240_000,
    hookTimeout: 120_000,
  },
});
