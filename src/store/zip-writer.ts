import type { FileHandle } from "node:fs/promises";
import { crc32 } from "node:zlib";

/** One file in a zip file, stored as it is. */
export interface ZipEntry {
  readonly name: string;
  readonly bytes: number;
  readonly crc: number;
  /** Where its local header begins. */
  readonly offset: number;
}

const most32 = 0xffffffff;

/**
 * Writes a zip file entry by entry, stored and not packed (films are packed already), each piece as it is read. Sizes and
 * places beyond 4 GB go into the 64-bit fields.
 * @source PKWARE, APPNOTE.TXT: .ZIP File Format Specification, version 6.3, sections 4.3 and 4.5.3 (from memory)
 */
export class ZipWriter {
  readonly #handle: FileHandle;
  readonly #entries: ZipEntry[] = [];
  #end = 0;

  constructor(handle: FileHandle) {
    this.#handle = handle;
  }

  /** Adds one file from its pieces; hears of each piece, so that a hash or progress can follow. */
  async add(name: string, pieces: AsyncIterable<Uint8Array>, hear: (piece: Uint8Array) => void): Promise<ZipEntry> {
    const offset = this.#end;
    let [crc, bytes] = [0, 0];
    await this.#append(localHeader({ name, bytes, crc, offset }));
    for await (const piece of pieces) {
      crc = crc32(piece, crc);
      bytes += piece.length;
      hear(piece);
      await this.#append(piece);
    }
    const entry = { name, bytes, crc, offset };
    // Only now are length and checksum known: the header is written a second time, over the first.
    const header = localHeader(entry);
    await this.#handle.write(header, 0, header.length, offset);
    this.#entries.push(entry);
    return entry;
  }

  /** Writes the directory of the zip file, after which nothing can be added. */
  async finish(): Promise<void> {
    const start = this.#end;
    for (const entry of this.#entries) await this.#append(directoryEntry(entry));
    await this.#append(endOfDirectory(this.#entries.length, start, this.#end));
  }

  async #append(bytes: Uint8Array): Promise<void> {
    for (let done = 0; done < bytes.length; ) {
      const { bytesWritten } = await this.#handle.write(bytes, done, bytes.length - done, this.#end);
      done += bytesWritten;
      this.#end += bytesWritten;
    }
  }
}

/** The header before a file: always with the 64-bit field, so that its length does not depend on the file's. */
function localHeader({ name, bytes, crc }: ZipEntry): Buffer {
  const field = sizeField([bytes, bytes]);
  const header = Buffer.alloc(30);
  header.writeUInt32LE(0x04034b50, 0);
  header.writeUInt16LE(45, 4);
  header.writeUInt16LE(0x0800, 6);
  header.writeUInt16LE(0x0021, 12);
  header.writeUInt32LE(crc, 14);
  header.writeUInt32LE(most32, 18);
  header.writeUInt32LE(most32, 22);
  header.writeUInt16LE(Buffer.byteLength(name), 26);
  header.writeUInt16LE(field.length, 28);
  return Buffer.concat([header, Buffer.from(name), field]);
}

function directoryEntry({ name, bytes, crc, offset }: ZipEntry): Buffer {
  const field = sizeField([bytes, bytes, offset]);
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(45, 4);
  entry.writeUInt16LE(45, 6);
  entry.writeUInt16LE(0x0800, 8);
  entry.writeUInt16LE(0x0021, 14);
  entry.writeUInt32LE(crc, 16);
  entry.writeUInt32LE(most32, 20);
  entry.writeUInt32LE(most32, 24);
  entry.writeUInt16LE(Buffer.byteLength(name), 28);
  entry.writeUInt16LE(field.length, 30);
  entry.writeUInt32LE(most32, 42);
  return Buffer.concat([entry, Buffer.from(name), field]);
}

/** The extra field 0x0001 with 64-bit numbers in the order: length, packed length, place. */
function sizeField(values: readonly number[]): Buffer {
  const field = Buffer.alloc(4 + 8 * values.length);
  field.writeUInt16LE(0x0001, 0);
  field.writeUInt16LE(8 * values.length, 2);
  values.forEach((value, index) => {
    field.writeBigUInt64LE(BigInt(value), 4 + 8 * index);
  });
  return field;
}

function endOfDirectory(count: number, start: number, end: number): Buffer {
  const long = Buffer.alloc(56);
  long.writeUInt32LE(0x06064b50, 0);
  long.writeBigUInt64LE(44n, 4);
  long.writeUInt16LE(45, 12);
  long.writeUInt16LE(45, 14);
  long.writeBigUInt64LE(BigInt(count), 24);
  long.writeBigUInt64LE(BigInt(count), 32);
  long.writeBigUInt64LE(BigInt(end - start), 40);
  long.writeBigUInt64LE(BigInt(start), 48);
  const locator = Buffer.alloc(20);
  locator.writeUInt32LE(0x07064b50, 0);
  locator.writeBigUInt64LE(BigInt(end), 8);
  locator.writeUInt32LE(1, 16);
  const short = Buffer.alloc(22);
  short.writeUInt32LE(0x06054b50, 0);
  short.writeUInt16LE(Math.min(count, 0xffff), 8);
  short.writeUInt16LE(Math.min(count, 0xffff), 10);
  short.writeUInt32LE(Math.min(end - start, most32), 12);
  short.writeUInt32LE(Math.min(start, most32), 16);
  return Buffer.concat([long, locator, short]);
}
