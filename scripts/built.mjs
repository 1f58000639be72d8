// Builds dist/ (the program and its pages) where the sources differ from those it was built from, by their content.
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const stampFile = join(root, "dist", ".canalog-built");

/** Builds what is missing or was built from other sources. */
export async function ensureBuilt() {
  const now = sourcesHash();
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === now) return;
  console.log("Building (once for each version) ...");
  const next = join(root, `dist.${process.pid}.part`);
  try {
    await buildInto(next);
    writeFileSync(join(next, ".canalog-built"), now);
    putInPlace(next);
  } finally {
    rmSync(next, { recursive: true, force: true });
  }
}

/** The pages, the program that serves them, and the threads beside it. */
async function buildInto(folder) {
  const { build } = await import("vite");
  const quiet = { logLevel: "error" };
  await build({
    ...quiet,
    configFile: join(root, "vite.config.ts"),
    build: { outDir: join(folder, "web"), emptyOutDir: true },
  });
  await build({
    ...quiet,
    configFile: false,
    root,
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: false,
      target: "node20",
      rolldownOptions: {
        input: {
          canalog: join(root, "src/cli/main.ts"),
          "film-worker": join(root, "src/server/film-worker.ts"),
          "document-worker": join(root, "src/server/documents/document-worker.ts"),
          "sum-worker": join(root, "src/server/sums/sum-worker.ts"),
          "comparing-worker": join(root, "src/server/comparing/comparing-worker.ts"),
        },
        output: { entryFileNames: "[name].mjs", chunkFileNames: "parts/[name]-[hash].mjs" },
      },
    },
  });
}

/** The new build takes the old one's place at once: nobody finds half of one. */
function putInPlace(next) {
  const old = join(root, `dist.${process.pid}.old`);
  if (existsSync(join(root, "dist"))) renameSync(join(root, "dist"), old);
  renameSync(next, join(root, "dist"));
  rmSync(old, { recursive: true, force: true });
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
