import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "vite";

const cache = resolve("node_modules/.cache");

/** A program of this folder as one plain file that Node runs as it is; gives its path. */
export async function buildProgram(program: "writer" | "restorer"): Promise<string> {
  mkdirSync(cache, { recursive: true });
  const name = `${program}-${process.pid}.mjs`;
  const output = { entryFileNames: name };
  await build({
    configFile: false,
    logLevel: "silent",
    build: { ssr: resolve(`test/soak/${program}.ts`), outDir: cache, emptyOutDir: false, rollupOptions: { output } },
  });
  return join(cache, name);
}

/** Lets the writer record into a home, kills it some ms after its first word, and gives the lines it said until then. */
export async function killWriter(writer: string, home: string, afterMs: number): Promise<string[]> {
  const child = spawn(process.execPath, [writer, home], { stdio: ["ignore", "pipe", "inherit"] });
  let said = "";
  child.stdout.on("data", (piece: Buffer) => {
    if (said === "") setTimeout(() => child.kill("SIGKILL"), afterMs);
    said += piece.toString();
  });
  await once(child, "close");
  // The last line may be cut; only whole lines were acknowledged.
  return said.split("\n").slice(0, -1);
}
