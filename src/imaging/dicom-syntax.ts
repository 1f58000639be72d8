/** How the pixels of a DICOM file are packed, as far as they are read here. */
export interface DicomSyntax {
  readonly littleEndian: boolean;
}

const read: Readonly<Record<string, DicomSyntax>> = {
  "1.2.840.10008.1.2": { littleEndian: true },
  "1.2.840.10008.1.2.1": { littleEndian: true },
  "1.2.840.10008.1.2.1.99": { littleEndian: true },
  "1.2.840.10008.1.2.2": { littleEndian: false },
};

/** Names of the compressed syntaxes, so that a refusal can say what the file holds. */
const compressed: Readonly<Record<string, string>> = {
  "1.2.840.10008.1.2.4.50": "JPEG baseline",
  "1.2.840.10008.1.2.4.51": "JPEG extended, 12 bits",
  "1.2.840.10008.1.2.4.57": "JPEG lossless",
  "1.2.840.10008.1.2.4.70": "JPEG lossless, first-order prediction",
  "1.2.840.10008.1.2.4.80": "JPEG-LS lossless",
  "1.2.840.10008.1.2.4.81": "JPEG-LS near-lossless",
  "1.2.840.10008.1.2.4.90": "JPEG 2000 lossless",
  "1.2.840.10008.1.2.4.91": "JPEG 2000",
  "1.2.840.10008.1.2.4.201": "High-Throughput JPEG 2000 lossless",
  "1.2.840.10008.1.2.4.202": "High-Throughput JPEG 2000 lossless, by resolution",
  "1.2.840.10008.1.2.4.203": "High-Throughput JPEG 2000",
  "1.2.840.10008.1.2.5": "RLE lossless",
};

/**
 * How to read the pixels of a transfer syntax.
 * Takes its identifier. Gives the syntax, or the name of one that is not read here.
 * @source DICOM PS3.6, annex A, transfer syntax identifiers (memory)
 */
export function dicomSyntaxOf(identifier: string): DicomSyntax | { readonly notRead: string } {
  const known = Object.hasOwn(read, identifier) ? read[identifier] : undefined;
  if (known !== undefined) return known;
  const name = Object.hasOwn(compressed, identifier) ? compressed[identifier] : undefined;
  return { notRead: name === undefined ? `transfer syntax ${identifier}` : `${name} (${identifier})` };
}
