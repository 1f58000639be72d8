// `npm test`: sets up what the tests need, runs them all, and closes with one line: N passed, N failed.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ensureBuilt } from "./built.mjs";
import { ensureDebianPackages } from "./debian-packages.mjs";
import { ensureInstalled } from "./installed.mjs";
import { root } from "./root.mjs";

ensureInstalled("all");
ensureDebianPackages();
await ensureBuilt();

const results = mkdtempSync(join(tmpdir(), "canalog-test-"));
const suites = [
  ["the rooms of the code", "vitest.config.ts"],
  ["journeys in a browser", "vitest.journeys.config.ts"],
];
const counts = { passed: 0, failed: 0, skipped: 0 };
let broken = false;
for (const [index, [name, config]] of suites.entries()) {
  console.log(`\nTests: ${name}`);
  const file = join(results, `${index}.json`);
  const args = [
    "node_modules/vitest/vitest.mjs",
    "run",
    "--config",
    config,
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${file}`,
  ];
  const run = spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" });
  broken ||= run.status !== 0;
  count(file);
}
console.log(
  `\n${counts.passed} passed, ${counts.failed} failed${counts.skipped > 0 ? `, ${counts.skipped} skipped` : ""}`,
);
process.exit(broken || counts.failed > 0 || counts.passed === 0 ? 1 : 0);

/** Adds a suite's counts; a suite that wrote none did not run and counts as one failure. */
function count(file) {
  try {
    const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(readFileSync(file, "utf8"));
    counts.passed += numPassedTests;
    counts.failed += numFailedTests;
    counts.skipped += numPendingTests + numTodoTests;
  } catch {
    counts.failed += 1;
  }
}
