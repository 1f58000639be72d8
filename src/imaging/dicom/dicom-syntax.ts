/** How the pixels of a DICOM file are packed. */
export interface DicomSyntax {
  readonly littleEndian: boolean;
  readonly packing: "none" | "rle" | "jpeg" | "jpegLs" | "jpeg2000";
  /** The syntax by its nature keeps less than it was given. */
  readonly lossy: boolean;
}

const plain = { littleEndian: true, packing: "none", lossy: false } as const;
const packed = (packing: DicomSyntax["packing"], lossy: boolean): DicomSyntax => ({ ...plain, packing, lossy });

const read: Readonly<Record<string, DicomSyntax>> = {
  "1.2.840.10008.1.2": plain,
  "1.2.840.10008.1.2.1": plain,
  "1.2.840.10008.1.2.1.99": plain,
  "1.2.840.10008.1.2.2": { ...plain, littleEndian: false },
  "1.2.840.10008.1.2.4.50": packed("jpeg", true),
  "1.2.840.10008.1.2.4.51": packed("jpeg", true),
  "1.2.840.10008.1.2.4.57": packed("jpeg", false),
  "1.2.840.10008.1.2.4.70": packed("jpeg", false),
  "1.2.840.10008.1.2.4.80": packed("jpegLs", false),
  "1.2.840.10008.1.2.4.81": packed("jpegLs", true),
  "1.2.840.10008.1.2.4.90": packed("jpeg2000", false),
  "1.2.840.10008.1.2.4.91": packed("jpeg2000", true),
  "1.2.840.10008.1.2.5": packed("rle", false),
};

/** Names of syntaxes that are not read, so that a refusal can say what the file holds. */
const others: Readonly<Record<string, string>> = {
  "1.2.840.10008.1.2.4.92": "JPEG 2000 of several components, lossless",
  "1.2.840.10008.1.2.4.93": "JPEG 2000 of several components",
  "1.2.840.10008.1.2.4.100": "MPEG-2 video",
  "1.2.840.10008.1.2.4.102": "MPEG-4 video",
  "1.2.840.10008.1.2.4.110": "JPEG XL lossless",
  "1.2.840.10008.1.2.4.112": "JPEG XL",
  "1.2.840.10008.1.2.4.201": "High-Throughput JPEG 2000 lossless",
  "1.2.840.10008.1.2.4.202": "High-Throughput JPEG 2000 lossless, by resolution",
  "1.2.840.10008.1.2.4.203": "High-Throughput JPEG 2000",
};

/**
 * How to read the pixels of a transfer syntax.
 * Takes its identifier. Gives the syntax, or the name of one that is not read here.
 * @source DICOM PS3.6, annex A, transfer syntax identifiers (memory)
 */
export function dicomSyntaxOf(identifier: string): DicomSyntax | { readonly notRead: string } {
  const known = Object.hasOwn(read, identifier) ? read[identifier] : undefined;
  if (known !== undefined) return known;
  const name = Object.hasOwn(others, identifier) ? others[identifier] : undefined;
  return { notRead: name === undefined ? `transfer syntax ${identifier}` : `${name} (${identifier})` };
}
