import type { DataSet } from "dicom-parser";

/** A table from whole numbers to outputs: `first` gives the first of them; what lies outside gives the nearest end. */
export interface LookupTable {
  readonly first: number;
  /** Bits that the outputs use. */
  readonly bits: number;
  readonly outputs: Uint16Array;
}

/**
 * A lookup table of a data set.
 * Takes the data set (or the item of a sequence), the tags of its descriptor and of its data.
 * Gives the table, or nothing where it is missing or has fewer entries than it says.
 * @source DICOM PS3.3 C.11.1.1 LUT descriptor and C.7.6.3.1.5 palette colour descriptor (memory)
 */
export function lookupTableOf(dataSet: DataSet, descriptor: string, data: string): LookupTable | undefined {
  const [head, body] = [dataSet.elements[descriptor], dataSet.elements[data]];
  if (head === undefined || body === undefined || head.length < 6) return undefined;
  // Nought stands for 65,536, which sixteen bits can't say.
  const count = dataSet.uint16(descriptor, 0) || 65_536;
  const isSigned = head.vr === undefined ? dataSet.uint16("x00280103") === 1 : head.vr === "SS";
  const first = (isSigned ? dataSet.int16(descriptor, 1) : dataSet.uint16(descriptor, 1)) ?? 0;
  const outputs = outputsOf(dataSet, data, count);
  if (outputs === undefined) return undefined;
  const largest = outputs.reduce((most, output) => Math.max(most, output), 1);
  const needed = Math.floor(Math.log2(largest)) + 1;
  return { first, bits: Math.max(needed, Math.min(16, dataSet.uint16(descriptor, 2) ?? 16)), outputs };
}

/** Entries of 8 bits may stand as bytes or as words. */
function outputsOf(dataSet: DataSet, data: string, count: number): Uint16Array | undefined {
  const { length, dataOffset } = dataSet.elements[data] ?? { length: 0, dataOffset: 0 };
  if (dataOffset + length > dataSet.byteArray.length || length < count) return undefined;
  if (length < 2 * count) return Uint16Array.from(dataSet.byteArray.subarray(dataOffset, dataOffset + count));
  return Uint16Array.from({ length: count }, (_, nth) => dataSet.uint16(data, nth) ?? 0);
}

/** What a table gives for a value. */
export function lookedUp({ first, outputs }: LookupTable, value: number): number {
  return outputs[Math.max(0, Math.min(outputs.length - 1, value - first))] ?? 0;
}
