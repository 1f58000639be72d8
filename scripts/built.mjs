// Builds dist/ (the program and its pages) where the sources differ from those it was built from, by their content.
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const stampFile = join(root, "dist", ".canalog-built");

/** Builds what is missing or was built from other sources. */
export async function ensureBuilt() {
  const now = sourcesHash();
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === now) return;
  console.log("Building (once for each version) ...");
  rmSync(join(root, "dist"), { recursive: true, force: true });
  const { build } = await import("vite");
  const quiet = { logLevel: "warn", configFile: join(root, "vite.config.ts") };
  await build({ ...quiet });
  await build({
    ...quiet,
    configFile: false,
    root,
    build: {
      ssr: join(root, "src/cli/main.ts"),
      outDir: join(root, "dist"),
      emptyOutDir: false,
      target: "node20",
      rolldownOptions: { output: { entryFileNames: "canalog.mjs", chunkFileNames: "parts/[name]-[hash].mjs" } },
    },
  });
  writeFileSync(stampFile, now);
}

function sourcesHash() {
  const hash = createHash("sha256");
  const files = [
    "package-lock.json",
    "vite.config.ts",
    "scripts/built.mjs",
    ...filesUnder("src"),
    ...filesUnder("data"),
  ];
  for (const file of files) hash.update(`${file}\0`).update(readFileSync(join(root, file)));
  return hash.digest("hex");
}

/** What the build reads: sources without their tests, and the published values; not the films. */
function filesUnder(folder) {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter(
      (entry) =>
        entry.isFile() && /\.(tsx?|css|html|json|otf|svg)$/.test(entry.name) && !/\.test\.tsx?$/.test(entry.name),
    )
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1))
    .sort();
}
