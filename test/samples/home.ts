import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** A new empty folder that goes when the test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "canalog-test-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/**
 * One hash over every name and byte of a folder. The database's index of its log, and a log that is empty, are left out:
 * the driver lets go of them only when its statements are collected, which may be at any time after closing.
 */
export function hashOfFolder(folder: string): string {
  const hash = createHash("sha256");
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  for (const file of files.filter(isOfRecord).sort()) hash.update(file.slice(folder.length)).update(readFileSync(file));
  return hash.digest("hex");
}

const isOfRecord = (file: string): boolean =>
  !file.endsWith("-shm") && !(file.endsWith("-wal") && statSync(file).size === 0);
