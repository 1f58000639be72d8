import { mkdirSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";
import { afterAll } from "vitest";

/** A folder for a thread's program, which goes when the tests of the file end. */
export function threadFolder(): string {
  const folder = resolve(`node_modules/.cache/thread-${process.pid}`);
  mkdirSync(folder, { recursive: true });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A thread's program as the build makes it. Takes its source and the folder to put it into. */
export async function builtThread(source: string, folder: string): Promise<string> {
  const name = `${source.replace(/^.*\//, "").replace(/\.ts$/, "")}.mjs`;
  const options = { ssr: resolve(source), outDir: folder, emptyOutDir: false };
  const rolldownOptions = { output: { entryFileNames: name } };
  await build({ configFile: false, logLevel: "silent", build: { ...options, rolldownOptions } });
  return join(folder, name);
}
