// Writes data/demo/cases/: the invented cases of the demo, the same for the same sources and the same list of films.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "../root.mjs";

const { build } = await import("vite");
mkdirSync(join(root, "node_modules", ".cache"), { recursive: true });
const bundle = mkdtempSync(join(root, "node_modules", ".cache", "demo-cases-"));
try {
  await build({
    configFile: false,
    root,
    logLevel: "warn",
    build: {
      ssr: join(root, "scripts/demo/cases/all-cases.ts"),
      outDir: bundle,
      emptyOutDir: true,
      target: "node20",
      rolldownOptions: { output: { entryFileNames: "all-cases.mjs" } },
    },
  });
  const { caseFiles } = await import(pathToFileURL(join(bundle, "all-cases.mjs")).href);
  const list = join(root, "data/demo/films/films.json");
  const files = caseFiles(existsSync(list) ? JSON.parse(readFileSync(list, "utf8")) : []);
  const folder = join(root, "data/demo/cases");
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) {
    writeFileSync(join(folder, name), text);
    console.log(`${name}: ${(text.length / 1e6).toFixed(2)} MB`);
  }
} finally {
  rmSync(bundle, { recursive: true, force: true });
}
