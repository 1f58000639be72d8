#!/usr/bin/env node
// The command line; it needs one `npm start` before, which installs and builds.
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { refuseOldNode } from "../scripts/node-version.mjs";

refuseOldNode();
const program = new URL("../dist/canalog.mjs", import.meta.url);
if (!existsSync(fileURLToPath(program))) {
  console.error("Cannot run: Canalog has not been built here; run `npm start` once");
  process.exit(3);
}
await import(program.href);
