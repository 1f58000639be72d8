import type { FileHandle } from "node:fs/promises";
import { Refusal } from "../core/refusal.ts";
import type { ZipEntry } from "./zip-writer.ts";

/** The most that the directory of a backup may take: enough for half a million files. */
const mostDirectoryBytes = 128 * 1024 * 1024;
const pieceBytes = 1024 * 1024;

/**
 * The files of a zip file as zip-writer.ts writes it, found from the directory at its end. Every number in it is held
 * against the length of the file before it is used.
 * @throws Refusal `backup.invalid`
 */
export async function readZipDirectory(handle: FileHandle, file: string): Promise<ZipEntry[]> {
  const { size } = await handle.stat();
  if (size < 98) throw notABackup(file, "it is too short");
  const end = await readAt(handle, size - 98, 98);
  if (end.readUInt32LE(0) !== 0x06064b50 || end.readUInt32LE(76) !== 0x06054b50)
    throw notABackup(file, "its end is missing or is not that of a backup");
  const [count, length, start] = [24, 40, 48].map((at) => Number(end.readBigUInt64LE(at)));
  if (count === undefined || length === undefined || start !== size - 98 - length || length > mostDirectoryBytes)
    throw notABackup(file, "its directory does not fit the file");
  const entries = entriesOf(await readAt(handle, start, length), file);
  const total = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  if (entries.length !== count || total > size) throw notABackup(file, "its directory does not fit the file");
  return entries;
}

function entriesOf(directory: Buffer, file: string): ZipEntry[] {
  const entries: ZipEntry[] = [];
  for (let at = 0; at < directory.length; ) {
    if (at + 46 > directory.length || directory.readUInt32LE(at) !== 0x02014b50)
      throw notABackup(file, "its directory is damaged");
    const [packing, nameLength, fieldLength] = [10, 28, 30].map((offset) => directory.readUInt16LE(at + offset));
    const next = at + 46 + (nameLength ?? 0) + 28;
    if (packing !== 0 || fieldLength !== 28 || next > directory.length || directory.readUInt16LE(at + 32) !== 0)
      throw notABackup(file, "its directory is damaged");
    const field = next - 28;
    if (directory.readUInt16LE(field) !== 1) throw notABackup(file, "its directory is damaged");
    const [bytes, stored, offset] = [4, 12, 20].map((place) => Number(directory.readBigUInt64LE(field + place)));
    if (bytes === undefined || offset === undefined || bytes !== stored)
      throw notABackup(file, "its directory is damaged");
    entries.push({
      name: directory.toString("utf8", at + 46, field),
      bytes,
      crc: directory.readUInt32LE(at + 16),
      offset,
    });
    at = next;
  }
  return entries;
}

/**
 * The bytes of one file, piece by piece.
 * @throws Refusal `backup.invalid` when its header is not that of the directory, or the file ends too early
 */
export async function* readZipEntry(handle: FileHandle, file: string, entry: ZipEntry): AsyncGenerator<Buffer> {
  const header = await readAt(handle, entry.offset, 30 + Buffer.byteLength(entry.name));
  if (header.length < 30 || header.readUInt32LE(0) !== 0x04034b50 || header.toString("utf8", 30) !== entry.name)
    throw notABackup(file, `the header of ${entry.name.slice(0, 80)} is damaged`);
  const start = entry.offset + header.length + header.readUInt16LE(28);
  for (let done = 0; done < entry.bytes; ) {
    const piece = await readAt(handle, start + done, Math.min(pieceBytes, entry.bytes - done));
    if (piece.length === 0) throw notABackup(file, "it ends too early");
    done += piece.length;
    yield piece;
  }
}

async function readAt(handle: FileHandle, position: number, length: number): Promise<Buffer> {
  const buffer = Buffer.alloc(length);
  const { bytesRead } = await handle.read(buffer, 0, length, position);
  return buffer.subarray(0, bytesRead);
}

/** The refusal of a file that can't be restored from. */
export const notABackup = (file: string, why: string): Refusal =>
  new Refusal("backup.invalid", `Cannot restore from ${file}: ${why}; use another backup, nothing was changed`, {
    file,
  });
