import { createHash } from "node:crypto";
import { createReadStream, existsSync } from "node:fs";
import { type FileHandle, mkdtemp, open, rename, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { Refusal } from "../core/refusal.ts";
import { type Manifest, manifestName, otherFiles } from "./backup-manifest.ts";
import { openDatabase } from "./dialect.ts";
import { flushFolder } from "./kept-files.ts";
import { checkVersion, databaseFile } from "./migrate.ts";
import { tablesSteps } from "./migrations.ts";
import type { Progress } from "./progress.ts";
import { readBackup } from "./read-backup.ts";
import { refusalOfDisk } from "./refusal-of-disk.ts";
import { namedFiles } from "./unfinished-files.ts";
import { ZipWriter } from "./zip-writer.ts";

export { restore } from "./restore.ts";

/** What a backup holds. */
export interface BackedUp {
  readonly files: number;
  readonly bytes: number;
  /** Files that were already gone from the home; `canalog check` tells more. */
  readonly missing: readonly string[];
}

/**
 * Writes the whole record into one zip file in the state of one moment, also while it is served, reads it back against
 * its hashes, and only then gives it its name; an older file of that name stays until then.
 * @throws Refusal `file.missing` where there is no record, `store.newerVersion`, `store.corrupt`, `store.full` or
 * `store.unwritable` for the backup's folder; nothing half done is left
 */
export async function backup(home: string, file: string, progress: Progress = () => undefined): Promise<BackedUp> {
  const known = tablesSteps.at(-1)?.version ?? 0;
  if (checkVersion(home, known) === 0)
    throw new Refusal("file.missing", `Cannot back up ${home}: there is no record in it`, { home });
  const temporary = `${file}.part`;
  try {
    const work = await mkdtemp(`${file}.part-`);
    try {
      const paths = await snapshot(home, work);
      const manifest = await writeBackup(temporary, [home, work], paths, progress);
      await readBackup(temporary);
      await rename(temporary, file);
      await flushFolder(dirname(file));
      const bytes = manifest.files.reduce((sum, one) => sum + one.bytes, 0);
      return { files: manifest.files.length, bytes, missing: manifest.missing };
    } finally {
      await rm(work, { recursive: true, force: true });
    }
  } catch (error) {
    await rm(temporary, { force: true }).catch(() => undefined);
    throw refusalOfDisk(error, dirname(file));
  }
}

/** A copy of the database in the work folder, and the paths of the files that this copy names. */
async function snapshot(home: string, work: string): Promise<string[]> {
  const live = openDatabase(databaseFile(home));
  try {
    live.copyInto(databaseFile(work));
  } finally {
    await live.close();
  }
  const copy = openDatabase(databaseFile(work));
  try {
    return [...(await namedFiles(copy.db))].sort();
  } finally {
    await copy.close();
  }
}

async function writeBackup(
  file: string,
  [home, work]: readonly [string, string],
  named: readonly string[],
  progress: Progress,
): Promise<Manifest> {
  const missing = named.filter((path) => !existsSync(join(home, path)));
  const others = otherFiles.filter((path) => existsSync(join(home, path)));
  const paths = ["canalog.sqlite", ...others, ...named.filter((path) => !missing.includes(path))];
  const handle = await open(file, "w");
  try {
    const zip = new ZipWriter(handle);
    const files: Manifest["files"] = [];
    for (const path of paths) {
      files.push(await addFile(zip, path, join(path === "canalog.sqlite" ? work : home, path)));
      progress(files.length, paths.length);
    }
    const madeAt = new Date().toISOString();
    const manifest: Manifest = { format: "canalog backup", version: 1, madeAt, files, missing };
    await addText(zip, manifestName, JSON.stringify(manifest));
    await finish(zip, handle);
    return manifest;
  } finally {
    await handle.close();
  }
}

async function addFile(zip: ZipWriter, path: string, source: string): Promise<Manifest["files"][number]> {
  const hash = createHash("sha256");
  const { bytes } = await zip.add(path, createReadStream(source), (piece) => hash.update(piece));
  return { path, bytes, sha256: hash.digest("hex") };
}

async function addText(zip: ZipWriter, name: string, text: string): Promise<void> {
  async function* pieces() {
    yield Buffer.from(text);
  }
  await zip.add(name, pieces(), () => undefined);
}

async function finish(zip: ZipWriter, handle: FileHandle): Promise<void> {
  await zip.finish();
  await handle.sync();
}
