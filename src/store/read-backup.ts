import { createHash } from "node:crypto";
import { type FileHandle, mkdir, open } from "node:fs/promises";
import { dirname, join } from "node:path";
import { crc32 } from "node:zlib";
import { type Manifest, manifestName, manifestSchema } from "./backup-manifest.ts";
import type { Progress } from "./progress.ts";
import { notABackup, readZipDirectory, readZipEntry } from "./zip-reader.ts";
import type { ZipEntry } from "./zip-writer.ts";

const mostManifestBytes = 256 * 1024 * 1024;

/**
 * Reads a whole backup against the hashes of its list; with a folder, each file is written into it as it is read. Gives
 * the list.
 * @throws Refusal `backup.invalid` for a damaged file, a name that is no file of a record, a name that stands twice, a
 * file too many or too few, and a wrong length or hash
 */
export async function readBackup(
  file: string,
  { into, progress = () => undefined }: { readonly into?: string; readonly progress?: Progress } = {},
): Promise<Manifest> {
  const handle = await open(file, "r");
  try {
    const entries = await readZipDirectory(handle, file);
    const manifest = await readManifest(handle, file, entries);
    const byName = checkNames(file, entries, manifest);
    for (const [index, { path, bytes, sha256 }] of manifest.files.entries()) {
      const entry = byName.get(path);
      if (entry?.bytes !== bytes) throw notABackup(file, `${path} is missing or has another length`);
      const target = into === undefined ? undefined : join(into, path);
      if ((await readThrough(handle, file, entry, target)) !== sha256)
        throw notABackup(file, `the bytes of ${path} are not those that were backed up`);
      progress(index + 1, manifest.files.length);
    }
    return manifest;
  } finally {
    await handle.close();
  }
}

async function readManifest(handle: FileHandle, file: string, entries: readonly ZipEntry[]): Promise<Manifest> {
  const entry = entries.find(({ name }) => name === manifestName);
  if (entry === undefined || entry.bytes > mostManifestBytes) throw notABackup(file, "it has no list of its files");
  const pieces: Buffer[] = [];
  for await (const piece of readZipEntry(handle, file, entry)) pieces.push(piece);
  const bytes = Buffer.concat(pieces);
  if (crc32(bytes) !== entry.crc) throw notABackup(file, "its list of files is damaged");
  const parsed = manifestSchema.safeParse(jsonOf(bytes));
  if (parsed.success) return parsed.data;
  throw notABackup(file, "its list of files has faults, or a newer program made it");
}

function jsonOf(bytes: Buffer): unknown {
  try {
    const value: unknown = JSON.parse(bytes.toString("utf8"));
    return value;
  } catch {
    return undefined;
  }
}

/** The entries by name, when they are exactly those of the list, each once. */
function checkNames(file: string, entries: readonly ZipEntry[], { files }: Manifest): Map<string, ZipEntry> {
  const byName = new Map(entries.map((entry) => [entry.name, entry]));
  const listed = new Set(files.map(({ path }) => path));
  if (byName.size !== entries.length || listed.size !== files.length)
    throw notABackup(file, "a name stands twice in it");
  const extra = entries.find(({ name }) => name !== manifestName && !listed.has(name));
  if (extra !== undefined) throw notABackup(file, "it holds a file that its list does not name");
  if (!listed.has("canalog.sqlite")) throw notABackup(file, "it holds no database");
  return byName;
}

/** SHA-256 of an entry, written to a file on the way where one is named. */
async function readThrough(handle: FileHandle, file: string, entry: ZipEntry, target?: string): Promise<string> {
  const hash = createHash("sha256");
  if (target === undefined) {
    for await (const piece of readZipEntry(handle, file, entry)) hash.update(piece);
    return hash.digest("hex");
  }
  await mkdir(dirname(target), { recursive: true });
  const out = await open(target, "wx");
  try {
    for await (const piece of readZipEntry(handle, file, entry)) {
      hash.update(piece);
      await out.writeFile(piece);
    }
    await out.sync();
  } finally {
    await out.close();
  }
  return hash.digest("hex");
}
