// What is installed, and whether it is what the lock file asks for. Decided by a stamp, never by file times.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const stampFile = join(root, "node_modules", ".canalog-installed.json");
const nodeMajor = process.versions.node.split(".")[0];

/** Installs what is missing: "run" for a start, "all" for tests as well. Does nothing where the stamp says it is there. */
export function ensureInstalled(asked) {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  const stamp = readStamp();
  // A checkout that has the tests' tools keeps them.
  const hasTools = stamp.what === "all" || existsSync(join(root, "node_modules", "vitest"));
  const what = hasTools ? "all" : asked;
  const enough = stamp.what === what;
  if (stamp.lock === lock && stamp.nodeMajor === nodeMajor && enough) return;
  console.log(
    what === "run" ? "Installing what Canalog needs (once) ..." : "Installing what the tests need (once) ...",
  );
  const args = ["ci", "--no-audit", "--no-fund", "--loglevel=error", ...(what === "run" ? ["--omit=dev"] : [])];
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const run = spawnSync(npm, args, { cwd: root, stdio: "inherit", shell: process.platform === "win32" });
  if (run.status !== 0) {
    console.error(
      "Cannot install: npm stopped with an error, shown above; check the network to the npm registry and start again",
    );
    process.exit(3);
  }
  writeFileSync(stampFile, `${JSON.stringify({ lock, what, nodeMajor })}\n`);
}

function readStamp() {
  if (!existsSync(stampFile)) return {};
  try {
    return JSON.parse(readFileSync(stampFile, "utf8"));
  } catch {
    return {};
  }
}
