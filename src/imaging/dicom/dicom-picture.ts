import type { DataSet, Element } from "dicom-parser";
import { checkDeclaredSize, type FilmLimits } from "../film-limits.ts";
import { refuseFile } from "../refuse-file.ts";
import type { StoredBits } from "./dicom-samples.ts";
import { type DicomSyntax, dicomSyntaxOf } from "./dicom-syntax.ts";
import { truncatedPicture } from "./truncated-picture.ts";

/** What the numbers of a pixel are. */
export type DicomColours = "MONOCHROME1" | "MONOCHROME2" | "PALETTE" | "RGB" | "YBR" | "YBR_422";

/** The picture that a DICOM data set declares, checked against the bytes that are there. */
export interface DicomPicture extends StoredBits {
  readonly columns: number;
  readonly rows: number;
  readonly photometric: DicomColours;
  readonly perPixel: 1 | 3;
  /** The components stand one after the other, in pixels that are not packed. */
  readonly apart: boolean;
  readonly syntax: DicomSyntax;
  readonly bitsAllocated: 8 | 16;
  /** Where the pixel data begin in the data set's bytes. */
  readonly from: number;
  /** 8-bit samples written as 16-bit words of a big-endian file stand in exchanged pairs. */
  readonly exchangedPairs: boolean;
}

/**
 * The picture of a data set, ready to be read.
 * Takes the data set parsed up to its pixels, the file's name, and the limits. Gives where and how the samples lie.
 * @throws Refusal `file.unsupported` for what is not read, `file.impossibleSize` where size and pixels disagree,
 * `file.truncated` where the pixels reach beyond the file, `file.damaged` for impossible bits.
 * @source DICOM PS3.3 C.7.6.3 image pixel module; PS3.5 clause 8 (memory)
 */
export function dicomPictureOf(dataSet: DataSet, name: string, limits: FilmLimits): DicomPicture {
  const syntax = syntaxOrRefuse(dataSet, name);
  const pixels = dataSet.elements.x7fe00010;
  if (pixels === undefined) throw withoutPixels(dataSet, name, limits);
  const size = { columns: dataSet.uint16("x00280011") ?? 0, rows: dataSet.uint16("x00280010") ?? 0 };
  checkDeclaredSize(name, size, limits);
  const colours = coloursOrRefuse(dataSet, syntax, name);
  const bits = bitsOrRefuse(dataSet, name);
  if (syntax.packing === "none") {
    const samples = size.columns * size.rows * (colours.photometric === "YBR_422" ? 2 : colours.perPixel);
    checkPixelBytes(dataSet, pixels, (samples * bits.bitsAllocated) / 8, name);
  }
  return {
    ...size,
    ...bits,
    ...colours,
    syntax,
    apart: dataSet.uint16("x00280006") === 1,
    from: pixels.dataOffset,
    exchangedPairs: !syntax.littleEndian && bits.bitsAllocated === 8 && pixels.vr === "OW",
  };
}

/** The refusal of a file that breaks off before its picture begins; how much more it had, nothing says. */
export function endsInHeader(name: string, foundBytes: number, cause?: Error): Error {
  return refuseFile(name, {
    code: "file.truncated",
    state: `its header goes on beyond the ${foundBytes} bytes that are there; copy it again`,
    facts: { expectedBytes: foundBytes + 1, foundBytes },
    cause,
  });
}

function withoutPixels(dataSet: DataSet, name: string, limits: FilmLimits): Error {
  const foundBytes = dataSet.byteArray.length;
  const breaksOff = Object.values(dataSet.elements).some(({ dataOffset, length }) => dataOffset + length > foundBytes);
  if (breaksOff) return endsInHeader(name, foundBytes);
  if (dataSet.elements.x7fe00008 !== undefined || dataSet.elements.x7fe00009 !== undefined)
    return refuseFile(name, {
      code: "file.unsupported",
      state: "its samples are floating numbers, which are not read; export it as 16 bits",
    });
  const size = { columns: dataSet.uint16("x00280011"), rows: dataSet.uint16("x00280010") };
  if (size.columns === undefined || size.rows === undefined)
    return refuseFile(name, {
      code: "file.unsupported",
      state: "it is a DICOM file without a picture; if it should show one, copy it again",
    });
  checkDeclaredSize(name, { columns: size.columns, rows: size.rows }, limits);
  const bytesEach = (dataSet.uint16("x00280100") ?? 16) / 8;
  const expectedBytes = size.columns * size.rows * bytesEach * (dataSet.uint16("x00280002") ?? 1);
  return truncatedPicture(name, expectedBytes, 0);
}

function syntaxOrRefuse(dataSet: DataSet, name: string): DicomSyntax {
  const syntax = dicomSyntaxOf(dataSet.string("x00020010")?.trim() ?? "");
  if (!("notRead" in syntax)) return syntax;
  throw refuseFile(name, {
    code: "file.unsupported",
    state: `its pixels are packed as ${syntax.notRead}, which is not read; export it uncompressed`,
    facts: { syntax: syntax.notRead },
  });
}

/** What the colours of a pixel can be called, and for "YBR_RCT" and "YBR_ICT" what JPEG 2000 makes of them. */
const coloursByName: Readonly<Record<string, Pick<DicomPicture, "photometric" | "perPixel">>> = {
  MONOCHROME1: { photometric: "MONOCHROME1", perPixel: 1 },
  MONOCHROME2: { photometric: "MONOCHROME2", perPixel: 1 },
  "PALETTE COLOR": { photometric: "PALETTE", perPixel: 1 },
  RGB: { photometric: "RGB", perPixel: 3 },
  YBR_FULL: { photometric: "YBR", perPixel: 3 },
  YBR_FULL_422: { photometric: "YBR_422", perPixel: 3 },
  YBR_RCT: { photometric: "RGB", perPixel: 3 },
  YBR_ICT: { photometric: "RGB", perPixel: 3 },
};

function coloursOrRefuse(
  dataSet: DataSet,
  { packing }: DicomSyntax,
  name: string,
): Pick<DicomPicture, "photometric" | "perPixel"> {
  const frames = Number(dataSet.string("x00280008")?.trim() || "1");
  if (!(frames >= 1))
    throw refuseFile(name, {
      code: "file.damaged",
      state: "its number of frames is none that a picture has; export the film again",
    });
  if (frames > 1)
    throw refuseFile(name, {
      code: "file.unsupported",
      state: `it holds ${frames} frames, and films of one frame are read; export the frame that shows the tooth`,
      facts: { frames },
    });
  const photometric = dataSet.string("x00280004")?.trim() ?? "";
  const samplesPerPixel = dataSet.uint16("x00280002") ?? 1;
  const found = Object.hasOwn(coloursByName, photometric) ? coloursByName[photometric] : undefined;
  const onlyUnpacked = /_(RCT|ICT)$/.test(photometric) && packing !== "jpeg2000";
  if (found?.perPixel === samplesPerPixel && !onlyUnpacked) return found;
  throw refuseFile(name, {
    code: "file.unsupported",
    state: `its colours are written as "${photometric.slice(0, 16)}" with ${samplesPerPixel} a pixel, which is not read; export it in grey`,
    facts: { samplesPerPixel },
  });
}

function bitsOrRefuse(dataSet: DataSet, name: string): StoredBits & Pick<DicomPicture, "bitsAllocated"> {
  const bitsAllocated = dataSet.uint16("x00280100") ?? 16;
  if (bitsAllocated !== 8 && bitsAllocated !== 16)
    throw refuseFile(name, {
      code: "file.unsupported",
      state: `it keeps ${bitsAllocated} bits a sample, and 8 or 16 are read; export it as 16 bits`,
    });
  const bitsStored = dataSet.uint16("x00280101") ?? bitsAllocated;
  const highBit = dataSet.uint16("x00280102") ?? bitsStored - 1;
  if (bitsStored < 1 || highBit >= bitsAllocated || highBit + 1 < bitsStored)
    throw refuseFile(name, {
      code: "file.damaged",
      state: `it declares ${bitsStored} bits up to bit ${highBit} of ${bitsAllocated}, which can't be; export it again`,
    });
  return { bitsAllocated, bitsStored, highBit, signed: dataSet.uint16("x00280103") === 1 };
}

function checkPixelBytes(dataSet: DataSet, pixels: Element, expectedBytes: number, name: string): void {
  const foundBytes = dataSet.byteArray.length - pixels.dataOffset;
  if (foundBytes < Math.min(expectedBytes, pixels.length)) throw truncatedPicture(name, expectedBytes, foundBytes);
  // An odd number of bytes is filled up with one.
  const declaredBytes = pixels.length;
  if (declaredBytes === expectedBytes || declaredBytes === expectedBytes + 1) return;
  throw refuseFile(name, {
    code: "file.impossibleSize",
    state: `its size needs ${expectedBytes} bytes of picture and it declares ${declaredBytes}; export the film again`,
    facts: { expectedBytes, declaredBytes },
  });
}
