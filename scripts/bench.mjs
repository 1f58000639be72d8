// `npm run bench`: how long a person waits, as a table. It judges nothing and fails no build. A word after it names another
// bench of the folder: `npm run bench -- least-cost-path`.
import { join } from "node:path";
import { ensureBuilt } from "./built.mjs";
import { ensureDebianPackages } from "./debian-packages.mjs";
import { ensureInstalled } from "./installed.mjs";
import { root } from "./root.mjs";

ensureInstalled("all");
ensureDebianPackages();
await ensureBuilt();
const { runnerImport } = await import("vite");
const name = process.argv[2] ?? "bench";
const { module } = await runnerImport(join(root, `bench/${name}.ts`), { root, configFile: false, logLevel: "error" });
await module.bench();
