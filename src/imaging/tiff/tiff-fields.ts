/** The fields of one directory of a TIFF by their tags: each gives its numbers when asked, since many are never needed. */
export type TiffFields = ReadonlyMap<number, () => readonly number[]>;

/** The directories of a TIFF and how its numbers are written. */
export interface TiffDirectories {
  readonly littleEndian: boolean;
  readonly directories: readonly TiffFields[];
}

/** Bytes of a number by its type; other types are not needed and left out. */
const bytesOfType: Readonly<Record<number, 1 | 2 | 4>> = { 1: 1, 3: 2, 4: 4 };
/** A file of more pages than this was made to keep a computer busy. */
const maxDirectories = 16;
/** More numbers than any field of a film has: a place for each row, or a palette of 16 bits a channel. */
const maxNumbers = 200_000;

/**
 * The directories of a TIFF, with the fields that hold whole numbers.
 * Takes the file's bytes. Gives at most {@link maxDirectories}; nothing where a directory or field reaches beyond the
 * file, or where the directories go round in a circle.
 * @source TIFF revision 6.0, 1992, section 2 (memory)
 */
export function tiffDirectoriesOf(bytes: Uint8Array): TiffDirectories | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const littleEndian = bytes[0] === 0x49;
  const directories: TiffFields[] = [];
  try {
    for (let at = view.getUint32(4, littleEndian); at !== 0; ) {
      if (directories.length === maxDirectories) return undefined;
      const count = view.getUint16(at, littleEndian);
      directories.push(fieldsOf(view, { at: at + 2, count, littleEndian }));
      at = view.getUint32(at + 2 + 12 * count, littleEndian);
    }
  } catch (cause) {
    // A view says with this that it was asked for bytes beyond its end.
    if (cause instanceof RangeError) return undefined;
    throw cause;
  }
  return { littleEndian, directories };
}

interface Place {
  readonly at: number;
  readonly count: number;
  readonly littleEndian: boolean;
}

function fieldsOf(view: DataView, { at, count, littleEndian }: Place): TiffFields {
  const fields = new Map<number, () => readonly number[]>();
  for (let nth = 0; nth < count; nth++) {
    const entry = at + 12 * nth;
    const bytesEach = bytesOfType[view.getUint16(entry + 2, littleEndian)];
    const numbers = view.getUint32(entry + 4, littleEndian);
    if (bytesEach === undefined || numbers > maxNumbers) continue;
    // Up to four bytes stand in the field itself, more elsewhere.
    const from = numbers * bytesEach <= 4 ? entry + 8 : view.getUint32(entry + 8, littleEndian);
    if (from + numbers * bytesEach > view.byteLength) throw new RangeError("a field reaches beyond the file");
    const numberOf = (index: number) =>
      numberAt(view, { at: from + index * bytesEach, count: bytesEach, littleEndian });
    const tag = view.getUint16(entry, littleEndian);
    fields.set(tag, () => Array.from({ length: numbers }, (_, index) => numberOf(index)));
  }
  return fields;
}

function numberAt(view: DataView, { at, count, littleEndian }: Place): number {
  if (count === 1) return view.getUint8(at);
  return count === 2 ? view.getUint16(at, littleEndian) : view.getUint32(at, littleEndian);
}
