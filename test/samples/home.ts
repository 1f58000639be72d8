import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** A new empty folder that goes when the test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "canalog-test-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** One hash over every name and byte of a folder. */
export function hashOfFolder(folder: string): string {
  const hash = createHash("sha256");
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  for (const file of files.sort()) hash.update(file.slice(folder.length)).update(readFileSync(file));
  return hash.digest("hex");
}
