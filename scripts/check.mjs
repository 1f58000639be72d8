// The gate: format and lint, types, import arrows, sizes, docs, tests. `npm run check -- --fast` leaves the tests out.
import { spawnSync } from "node:child_process";

const fast = process.argv.includes("--fast");
const steps = [
  ["format and lint", "npx", ["biome", "check", "--error-on-warnings", "."]],
  ["types", "node", ["node_modules/typescript/bin/tsc", "-p", "."]],
  ["import arrows", "npx", ["depcruise", "--no-progress", "--output-type", "err", "src"]],
  ["sizes", "node", ["scripts/check-sizes.mjs"]],
  ["unused code", "npx", ["knip", "--no-progress"]],
  ...(fast ? [] : [["tests", "node", ["scripts/test.mjs"]]]),
];

const failed = [];
for (const [name, command, args] of steps) {
  const started = Date.now();
  const run = spawnSync(command, args, { stdio: "inherit" });
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  console.log(`${run.status === 0 ? "ok    " : "FAILED"} ${name} (${seconds} s)`);
  if (run.status !== 0) failed.push(name);
}
if (failed.length > 0) {
  console.log(`The gate is closed: ${failed.join(", ")}`);
  process.exit(1);
}
