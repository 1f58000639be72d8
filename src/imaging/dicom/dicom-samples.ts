/** Which bits of a cell hold the sample. */
export interface StoredBits {
  readonly bitsStored: number;
  readonly highBit: number;
  readonly signed: boolean;
}

/** Where the samples of a DICOM picture lie and how they are written. */
export interface SampleLayout extends StoredBits {
  readonly bytes: Uint8Array;
  /** Where the first sample begins. */
  readonly from: number;
  readonly count: number;
  readonly bytesEach: 1 | 2;
  readonly littleEndian: boolean;
  /** 8-bit samples written as 16-bit words of a big-endian file stand in exchanged pairs. */
  readonly exchangedPairs: boolean;
}

/**
 * The samples of a DICOM picture as unsigned numbers.
 * Takes the layout. Gives `count` samples below 2^bitsStored; signed ones have 2^(bitsStored-1) added, so that their
 * order is kept. Bits outside the stored ones (overlays of old files) are left out.
 * @source DICOM PS3.5, clause 8.1.1 pixel cells and clause 8.2 byte ordering (memory)
 */
export function dicomSamplesOf(layout: SampleLayout): Uint16Array {
  const { bytes, from, bitsStored } = layout;
  const samples = new Uint16Array(layout.count);
  const shift = layout.highBit + 1 - bitsStored;
  const mask = 2 ** bitsStored - 1;
  const sign = layout.signed ? 2 ** (bitsStored - 1) : 0;
  const low = layout.littleEndian ? 0 : 1;
  const pair = layout.exchangedPairs ? 1 : 0;
  for (let index = 0; index < samples.length; index++) {
    const cell =
      layout.bytesEach === 1
        ? (bytes[from + (index ^ pair)] ?? 0)
        : (bytes[from + 2 * index + low] ?? 0) | ((bytes[from + 2 * index + 1 - low] ?? 0) << 8);
    samples[index] = ((cell >> shift) & mask) ^ sign;
  }
  return samples;
}

/** The value that a stored 0 stands for. */
export const signedOffsetOf = (bitsStored: number, signed: boolean): number => (signed ? -(2 ** (bitsStored - 1)) : 0);
