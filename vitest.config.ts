import { defineConfig } from "vitest/config";

/** Rooms whose modules keep nothing that another file's tests could meet: they share them, and load them once a worker. */
const sharing = ["core", "record", "ledger", "figures", "pages", "imaging", "web"];

export default defineConfig({
  test: {
    environment: "node",
    // All cores: the usual one less leaves half of a machine of two idle.
    maxWorkers: "100%",
    // Only what hangs is ended: a loaded machine takes several times as long as a quiet one.
    testTimeout: 240_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: "sharing modules",
          isolate: false,
          include: sharing.map((room) => `src/${room}/**/*.test.{ts,tsx}`),
        },
      },
      {
        extends: true,
        test: {
          name: "each by itself",
          include: ["src/**/*.test.{ts,tsx}", "test/**/*.test.ts", "scripts/**/*.test.ts"],
          exclude: [...sharing.map((room) => `src/${room}/**`), "**/node_modules/**"],
        },
      },
    ],
  },
});
