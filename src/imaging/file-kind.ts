/** What a file's first bytes show it to be. */
export type FileKind =
  | { readonly kind: "dicom" | "png" | "jpeg" | "tiff" | "bmp" }
  /** A picture of a kind that is not read here, or no picture at all. */
  | { readonly kind: "picture" | "other"; readonly looksLike: string };

interface Signature {
  readonly at: number;
  readonly bytes: readonly number[];
  readonly is: FileKind;
}

const ascii = (text: string): number[] => Array.from(text, (letter) => letter.charCodeAt(0));
const picture = (looksLike: string): FileKind => ({ kind: "picture", looksLike });
const other = (looksLike: string): FileKind => ({ kind: "other", looksLike });

const signatures: readonly Signature[] = [
  { at: 128, bytes: ascii("DICM"), is: { kind: "dicom" } },
  { at: 0, bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], is: { kind: "png" } },
  { at: 0, bytes: [0xff, 0xd8, 0xff], is: { kind: "jpeg" } },
  { at: 0, bytes: [0x49, 0x49, 0x2a, 0x00], is: { kind: "tiff" } },
  { at: 0, bytes: [0x4d, 0x4d, 0x00, 0x2a], is: { kind: "tiff" } },
  { at: 0, bytes: [0x49, 0x49, 0x2b, 0x00], is: picture("a TIFF with places of 64 bits") },
  { at: 0, bytes: [0x4d, 0x4d, 0x00, 0x2b], is: picture("a TIFF with places of 64 bits") },
  { at: 0, bytes: ascii("GIF8"), is: picture("a GIF picture") },
  { at: 0, bytes: ascii("BM"), is: { kind: "bmp" } },
  { at: 8, bytes: ascii("WEBP"), is: picture("a WebP picture") },
  { at: 4, bytes: ascii("ftyphei"), is: picture("a HEIC picture") },
  { at: 4, bytes: ascii("ftypavif"), is: picture("an AVIF picture") },
  { at: 4, bytes: ascii("jP  "), is: picture("a JPEG 2000 picture") },
  { at: 0, bytes: [0xff, 0x4f, 0xff, 0x51], is: picture("a JPEG 2000 picture") },
  { at: 0, bytes: ascii("%PDF"), is: other("a PDF document") },
  { at: 0, bytes: [0x50, 0x4b, 0x03, 0x04], is: other("a ZIP archive or an office document") },
  { at: 0, bytes: [0x1f, 0x8b], is: other("a gzip archive") },
  { at: 0, bytes: ascii("Rar!"), is: other("a RAR archive") },
  { at: 0, bytes: ascii("MZ"), is: other("a program") },
  { at: 4, bytes: ascii("ftyp"), is: other("a video") },
  { at: 0, bytes: ascii("<"), is: other("a web page or an XML text") },
];

/**
 * What a file is, told from its content and never from its name.
 * Takes the file's bytes. Gives the kind; for what is not read here also what the first bytes look like.
 */
export function fileKindOf(bytes: Uint8Array): FileKind {
  const found = signatures.find(({ at, bytes: wanted }) => wanted.every((byte, index) => bytes[at + index] === byte));
  return found?.is ?? other(firstBytesText(bytes));
}

function firstBytesText(bytes: Uint8Array): string {
  if (bytes.length === 0) return "an empty file";
  const first = bytes.subarray(0, 64);
  const isText = first.every((byte) => byte === 9 || byte === 10 || byte === 13 || (byte >= 32 && byte < 127));
  if (isText) return "a plain text";
  const hexadecimal = Array.from(bytes.subarray(0, 8), (byte) => byte.toString(16).padStart(2, "0")).join(" ");
  return `nothing known (it begins ${hexadecimal})`;
}
