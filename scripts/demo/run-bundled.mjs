// Runs a TypeScript file of scripts/demo: bundles it to a temporary file first, because Node 20 runs no TypeScript.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";
import { root } from "../root.mjs";

/** Runs `file` (from the checkout's folder) and gives what it exports. */
export async function runBundled(file) {
  const folder = mkdtempSync(join(tmpdir(), "canalog-demo-"));
  try {
    await build({
      configFile: false,
      logLevel: "warn",
      root,
      build: { ssr: join(root, file), outDir: folder, emptyOutDir: true, target: "node20", minify: false },
      ssr: { noExternal: true },
    });
    return await import(pathToFileURL(join(folder, basename(file).replace(/\.ts$/, ".js"))).href);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
