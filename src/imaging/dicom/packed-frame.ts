import { checkDeclaredSize, type FilmLimits } from "../film-limits.ts";
import { unpackJpeg } from "../jpeg/unpack-jpeg.ts";
import { refuseFile } from "../refuse-file.ts";
import { unpackOrRefuse } from "../unpack-or-refuse.ts";
import type { LoadCodec } from "../wasm-codec.ts";
import { type CodestreamSize, jpeg2000SizeOf, jpegLsSizeOf } from "./codestream-size.ts";
import type { DicomPicture } from "./dicom-picture.ts";
import { rleFrame } from "./rle-frame.ts";
import { truncatedPicture } from "./truncated-picture.ts";
import { withColoursNamed } from "./with-colours-named.ts";

/** The samples of a frame once unpacked: low byte first, and how the components stand. */
export interface UnpackedFrame {
  readonly bytes: Uint8Array;
  readonly bytesEach: 1 | 2;
  /** Bits of a sample as the packed frame says. */
  readonly bits: number;
  readonly apart: boolean;
  /** The codec has turned brightness and colour differences into red, green and blue. */
  readonly madeRgb: boolean;
  /** The frame keeps less than it was given. */
  readonly lossy: boolean;
}

/** What a frame is unpacked for. */
export interface UnpackingFrame {
  readonly name: string;
  readonly limits: FilmLimits;
  readonly loadCodec?: LoadCodec | undefined;
}

/**
 * The samples of a packed frame.
 * Takes its bytes, the picture that the data set declares, and what it is unpacked for.
 * Gives the samples; their size, and that of the frame's own header, is that of the data set.
 * @throws Refusal `file.damaged`, `file.truncated`, `file.impossibleSize`, `file.unsupported`.
 */
export async function unpackedFrame(
  frame: Uint8Array,
  picture: DicomPicture,
  about: UnpackingFrame,
): Promise<UnpackedFrame> {
  const { packing } = picture.syntax;
  if (packing === "rle" || packing === "none") return ofRuns(frame, picture, about.name);
  if (packing === "jpeg") return ofJpeg(frame, picture, about);
  const size = packing === "jpegLs" ? jpegLsSizeOf(frame) : jpeg2000SizeOf(frame);
  checkSize(size, picture, about);
  // The codec of JPEG 2000 makes a picture of what it finds, and says nothing of what is missing.
  if (packing === "jpeg2000" && !endsWithMark(frame))
    throw truncatedPicture(about.name, frame.length + 2, frame.length);
  const found = await unpackOrRefuse(about.name, { codec: packing, bytes: frame, loadCodec: about.loadCodec });
  checkSize(found, picture, about);
  const bytesEach = found.bits <= 8 ? 1 : 2;
  checkBytes(found.data.length, picture, { bytesEach, name: about.name });
  const { bits, apart, data } = found;
  return { bytes: data, bytesEach, bits, apart, madeRgb: false, lossy: picture.syntax.lossy };
}

/** Whether the mark that ends a stream is there, before no more than some filling. */
const endsWithMark = (frame: Uint8Array): boolean => {
  const at = frame.lastIndexOf(0xd9);
  return at > 0 && frame[at - 1] === 0xff && frame.length - at <= 16;
};

function ofRuns(frame: Uint8Array, picture: DicomPicture, name: string): UnpackedFrame {
  const { columns, rows, perPixel, bitsAllocated } = picture;
  const bytesEach = bitsAllocated === 8 ? 1 : 2;
  const bytes = rleFrame(frame, { pixels: columns * rows, components: perPixel, bytesEach }, name);
  return { bytes, bytesEach, bits: bitsAllocated, apart: true, madeRgb: false, lossy: false };
}

async function ofJpeg(frame: Uint8Array, picture: DicomPicture, about: UnpackingFrame): Promise<UnpackedFrame> {
  const stream = picture.photometric === "RGB" ? withColoursNamed(frame) : frame;
  const jpeg = await unpackJpeg(stream, about);
  checkSize(jpeg, picture, about);
  const { data, bits, apart } = jpeg;
  const lossy = jpeg.lossy || picture.syntax.lossy;
  if (data instanceof Uint8Array) return { bytes: data, bytesEach: 1, bits, apart, madeRgb: true, lossy };
  const bytes = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
  return { bytes, bytesEach: 2, bits, apart, madeRgb: false, lossy };
}

function checkSize(size: CodestreamSize | undefined, picture: DicomPicture, about: UnpackingFrame): void {
  const { columns, rows, perPixel } = picture;
  if (size === undefined)
    throw refuseFile(about.name, {
      code: "file.damaged",
      state: "the header of its packed picture is damaged; export the film again",
    });
  checkDeclaredSize(about.name, size, about.limits);
  const fits = size.columns === columns && size.rows === rows && size.components === perPixel;
  if (fits && size.bits >= 1 && size.bits <= 16) return;
  const found = `${size.columns} x ${size.rows} x ${size.components} of ${size.bits} bits`;
  throw refuseFile(about.name, {
    code: "file.damaged",
    state: `it declares ${columns} x ${rows} x ${perPixel} samples, and its packed picture has ${found}; export it again`,
    facts: { columns, rows, found: { ...size } },
  });
}

function checkBytes(
  foundBytes: number,
  { columns, rows, perPixel }: DicomPicture,
  { bytesEach, name }: { bytesEach: number; name: string },
): void {
  if (foundBytes >= columns * rows * perPixel * bytesEach) return;
  throw refuseFile(name, { code: "file.damaged", state: "its packed picture is damaged; export the film again" });
}
