import { createHash } from "node:crypto";
import { type FileHandle, mkdir, open, readdir, rename, rm, stat } from "node:fs/promises";
import { dirname, join, sep } from "node:path";

/** The end of the name of a file that is still being written. */
export const temporaryEnd = ".part";

/** The folders of a home that hold files, each file named by a row of the database. */
export const fileFolders = ["films", "documents"] as const;

/** Where a film lies in a home: films/ab/abcdef..., so that no folder grows too long. */
export const filmPath = (hash: string): string => `films/${hash.slice(0, 2)}/${hash}`;

/** Where a document lies in a home: by its content, like a film. */
export const documentPath = (sha256: string): string => `documents/${sha256.slice(0, 2)}/${sha256}`;

/** SHA-256 of bytes, 64 hexadecimal digits. */
export const sha256Of = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/**
 * Writes a file whole or not at all: to a temporary name, flushed, renamed, its folder flushed. Takes a path with
 * forward slashes inside the home.
 */
export async function writeKeptFile(home: string, path: string, bytes: Uint8Array): Promise<void> {
  const file = join(home, path);
  const temporary = `${file}${temporaryEnd}`;
  await mkdir(dirname(file), { recursive: true });
  try {
    await withHandle(temporary, "w", async (handle) => {
      await handle.writeFile(bytes);
      await handle.sync();
    });
    await rename(temporary, file);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
  await flushFolder(dirname(file));
}

/** Takes a file away; nothing happens where there is none. */
export async function removeKeptFile(home: string, path: string): Promise<void> {
  await rm(join(home, path), { force: true });
}

/** Whether a file is there with the given number of bytes. */
export async function isKept(home: string, path: string, bytes: number): Promise<boolean> {
  try {
    return (await stat(join(home, path))).size === bytes;
  } catch {
    return false;
  }
}

/** Paths of all files under one folder of a home, with forward slashes, sorted; none where the folder is absent. */
export async function keptFiles(home: string, folder: string): Promise<string[]> {
  try {
    const entries = await readdir(join(home, folder), { recursive: true, withFileTypes: true });
    const files = entries.filter((entry) => !entry.isDirectory());
    return files
      .map((entry) =>
        join(entry.parentPath, entry.name)
          .slice(home.length + 1)
          .replaceAll(sep, "/"),
      )
      .sort();
  } catch (error) {
    if (error instanceof Error && Reflect.get(error, "code") === "ENOENT") return [];
    throw error;
  }
}

/** Makes the names in a folder last a power cut; a system that can't flush a folder is left as it is. */
export async function flushFolder(folder: string): Promise<void> {
  if (process.platform === "win32") return;
  await withHandle(folder, "r", (handle) => handle.sync());
}

async function withHandle<Given>(
  file: string,
  flags: string,
  work: (handle: FileHandle) => Promise<Given>,
): Promise<Given> {
  const handle = await open(file, flags);
  try {
    return await work(handle);
  } finally {
    await handle.close();
  }
}
