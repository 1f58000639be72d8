// Writes data/demo/cases/: the invented cases of the demo, the same for the same sources and the same list of films.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../root.mjs";
import { runBundled } from "./run-bundled.mjs";

const { caseFiles } = await runBundled("scripts/demo/cases/all-cases.ts");
const list = join(root, "data/demo/films/films.json");
const files = caseFiles(existsSync(list) ? JSON.parse(readFileSync(list, "utf8")) : undefined);
const folder = join(root, "data/demo/cases");
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(files)) {
  writeFileSync(join(folder, name), text);
  console.log(`${name}: ${(text.length / 1e6).toFixed(2)} MB`);
}
