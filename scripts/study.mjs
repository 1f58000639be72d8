// Runs the studies of accuracy and coverage; a word after it picks some of them: `npm run study -- curvature`.
import { spawnSync } from "node:child_process";

const command = ["vitest", "run", "--config", "vitest.study.config.ts", ...process.argv.slice(2)];
const run = spawnSync("npx", command, { stdio: "inherit" });
process.exit(run.status ?? 1);
