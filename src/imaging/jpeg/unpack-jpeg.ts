import { checkDeclaredSize, type FilmLimits } from "../film-limits.ts";
import { refuseFile } from "../refuse-file.ts";
import { unpackOrRefuse } from "../unpack-or-refuse.ts";
import type { LoadCodec } from "../wasm-codec.ts";
import { JpegFault } from "./jpeg-fault.ts";
import { type JpegHeader, jpegHeaderOf } from "./jpeg-header.ts";
import { jpegStreamOf } from "./jpeg-stream.ts";
import { losslessSamplesOf } from "./lossless-jpeg.ts";
import { sequentialSamplesOf } from "./sequential-jpeg.ts";

/** A picture in more scans than this was made to keep a computer busy. */
const maxScans = 100;

/** A JPEG's samples before anything is made of them. */
export interface UnpackedJpeg {
  readonly columns: number;
  readonly rows: number;
  readonly components: number;
  /** Bits of a sample. */
  readonly bits: number;
  readonly data: Uint8Array | Uint16Array;
  /** The components stand one after the other and not pixel by pixel. */
  readonly apart: boolean;
  readonly lossy: boolean;
}

/** What a JPEG is unpacked for: the name for messages, the limits, and who brings the codec (browsers). */
export interface UnpackingJpeg {
  readonly name: string;
  readonly limits: FilmLimits;
  readonly loadCodec?: LoadCodec | undefined;
}

/**
 * The samples of a JPEG: 8 bits baseline, extended or progressive by the codec; 12 bits sequential and 2 to 16 bits
 * lossless by decoders of our own.
 * Takes the stream's bytes, beginning with its start mark. Gives one or three components; those of 8 bits that were
 * written as brightness and two colours come back as red, green and blue.
 * @throws Refusal `file.damaged`, `file.truncated`, `file.impossibleSize`, `file.unsupported`.
 */
export async function unpackJpeg(bytes: Uint8Array, about: UnpackingJpeg): Promise<UnpackedJpeg> {
  const { name, limits, loadCodec } = about;
  const header = jpegHeaderOf(bytes);
  if (header === undefined)
    throw refuseFile(name, { code: "file.damaged", state: "its JPEG header is damaged; export the film again" });
  checkHeader(name, header, { limits, foundBytes: bytes.length });
  if (header.coding === "lossless" || header.precision !== 8) return ownUnpacked(bytes, name, header);
  const { columns, rows, components, data } = await unpackOrRefuse(name, { codec: "jpeg", bytes, loadCodec });
  if (columns !== header.columns || rows !== header.rows || components !== header.components)
    throw refuseFile(name, { code: "file.damaged", state: "its JPEG headers disagree; export the film again" });
  return { columns, rows, components, bits: 8, data, apart: false, lossy: true };
}

function checkHeader(
  name: string,
  header: JpegHeader,
  { limits, foundBytes }: { limits: FilmLimits; foundBytes: number },
): void {
  const unsupported = unsupportedText(header);
  if (unsupported !== undefined)
    throw refuseFile(name, { code: "file.unsupported", state: `${unsupported}; save it as PNG` });
  checkDeclaredSize(name, header, limits);
  if (!header.ended)
    throw refuseFile(name, {
      code: "file.truncated",
      state: `it ends after ${foundBytes} bytes without the mark that ends a JPEG; copy it again`,
      facts: { expectedBytes: foundBytes + 2, foundBytes },
    });
}

function unsupportedText({ coding, precision, components, scans }: JpegHeader): string | undefined {
  if (coding === "arithmetic") return "it is a JPEG of arithmetic coding, which is not read";
  if (coding !== "lossless" && precision !== 8 && !(precision === 12 && coding === "extended"))
    return `it is a ${coding} JPEG of ${precision} bits, which is not read`;
  if (components !== 1 && components !== 3)
    return `it is a JPEG of ${components} colour components, and 1 or 3 are read`;
  if (scans > maxScans) return `its picture is spread over ${scans} scans, and ${maxScans} are read`;
  return undefined;
}

function ownUnpacked(bytes: Uint8Array, name: string, header: JpegHeader): UnpackedJpeg {
  try {
    const stream = jpegStreamOf(bytes);
    const { coding, columns, rows, precision, components } = stream.frame;
    // What was checked and what is decoded must be the same frame.
    if (columns !== header.columns || rows !== header.rows || components.length !== header.components)
      throw new JpegFault("damaged", "its JPEG headers disagree");
    const data = coding === "lossless" ? losslessSamplesOf(stream) : sequentialSamplesOf(stream);
    const lossy = coding !== "lossless" || stream.scans.some(({ approximation }) => approximation !== 0);
    return { columns, rows, components: components.length, bits: precision, data, apart: true, lossy };
  } catch (cause) {
    if (cause instanceof JpegFault) throw refuseFile(name, faultOf(cause, bytes.length));
    throw cause;
  }
}

function faultOf(cause: JpegFault, foundBytes: number): Parameters<typeof refuseFile>[1] {
  const { kind, message } = cause;
  if (kind === "unsupported") return { code: "file.unsupported", state: `${message}; save it as PNG`, cause };
  if (kind === "damaged") return { code: "file.damaged", state: `${message}; export the film again`, cause };
  const facts = { expectedBytes: foundBytes + 1, foundBytes };
  return { code: "file.truncated", state: `${message}; copy it again`, facts, cause };
}
