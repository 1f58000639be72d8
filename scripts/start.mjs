// `npm start`: installs, builds, serves. Runs on nothing but Node's own parts until all is in place.
import { refuseOldNode } from "./node-version.mjs";

refuseOldNode();
const { ensureInstalled } = await import("./installed.mjs");
const { ensureBuilt } = await import("./built.mjs");
ensureInstalled("run");
await ensureBuilt();
process.argv.splice(2, 0, "serve");
await import("../dist/canalog.mjs");
