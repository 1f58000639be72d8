import type { DataSet, Element } from "dicom-parser";
import type { SampleLayout } from "./dicom-samples.ts";
import { dicomSyntaxOf } from "./dicom-syntax.ts";
import { checkDeclaredSize, type FilmLimits } from "./film-limits.ts";
import type { ColourLayout } from "./luminance.ts";
import { refuseFile } from "./refuse-file.ts";

/** The picture that a DICOM data set declares, checked against the bytes that are there. */
export interface DicomPicture extends SampleLayout {
  readonly columns: number;
  readonly rows: number;
  readonly photometric: "MONOCHROME1" | "MONOCHROME2" | "RGB";
  /** How the three components lie, for RGB. */
  readonly colour?: ColourLayout;
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
  const photometric = photometricOrRefuse(dataSet, name);
  const bits = bitsOrRefuse(dataSet, name);
  const count = size.columns * size.rows * (photometric === "RGB" ? 3 : 1);
  checkPixelBytes(dataSet, pixels, (count * bits.bitsAllocated) / 8, name);
  return {
    ...size,
    ...bits,
    photometric,
    count,
    bytes: dataSet.byteArray,
    from: pixels.dataOffset,
    littleEndian: syntax.littleEndian,
    exchangedPairs: !syntax.littleEndian && bits.bitsAllocated === 8 && pixels.vr === "OW",
    ...(photometric === "RGB" ? { colour: colourLayoutOf(dataSet, size.columns * size.rows) } : {}),
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
  const size = { columns: dataSet.uint16("x00280011"), rows: dataSet.uint16("x00280010") };
  if (size.columns === undefined || size.rows === undefined)
    return refuseFile(name, {
      code: "file.unsupported",
      state: "it is a DICOM file without a picture; if it should show one, copy it again",
    });
  checkDeclaredSize(name, { columns: size.columns, rows: size.rows }, limits);
  const bytesEach = (dataSet.uint16("x00280100") ?? 16) / 8;
  const expectedBytes = size.columns * size.rows * bytesEach * (dataSet.uint16("x00280002") ?? 1);
  return truncated(name, expectedBytes, 0);
}

function truncated(name: string, expectedBytes: number, foundBytes: number): Error {
  return refuseFile(name, {
    code: "file.truncated",
    state: `its picture ends early: ${expectedBytes} bytes are needed and ${foundBytes} are there; copy it again`,
    facts: { expectedBytes, foundBytes },
  });
}

function syntaxOrRefuse(dataSet: DataSet, name: string): { readonly littleEndian: boolean } {
  const syntax = dicomSyntaxOf(dataSet.string("x00020010")?.trim() ?? "");
  if ("littleEndian" in syntax) return syntax;
  throw refuseFile(name, {
    code: "file.unsupported",
    state: `its pixels are packed as ${syntax.notRead}, and compressed DICOM is not read yet; export it uncompressed`,
    facts: { syntax: syntax.notRead },
  });
}

function photometricOrRefuse(dataSet: DataSet, name: string): DicomPicture["photometric"] {
  const frames = Number(dataSet.string("x00280008") ?? "1");
  if (frames > 1)
    throw refuseFile(name, {
      code: "file.unsupported",
      state: `it holds ${frames} frames, and films of several frames are not read yet; export one frame`,
      facts: { frames },
    });
  const photometric = dataSet.string("x00280004")?.trim() ?? "";
  const perPixel = dataSet.uint16("x00280002") ?? 1;
  if ((photometric === "MONOCHROME1" || photometric === "MONOCHROME2") && perPixel === 1) return photometric;
  if (photometric === "RGB" && perPixel === 3) return photometric;
  throw refuseFile(name, {
    code: "file.unsupported",
    state: `its colours are written as "${photometric.slice(0, 16)}" with ${perPixel} a pixel, which is not read; export it in grey`,
    facts: { samplesPerPixel: perPixel },
  });
}

type Bits = Pick<SampleLayout, "bitsAllocated" | "bitsStored" | "highBit" | "signed">;

function bitsOrRefuse(dataSet: DataSet, name: string): Bits {
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
  if (foundBytes < Math.min(expectedBytes, pixels.length)) throw truncated(name, expectedBytes, foundBytes);
  // An odd number of bytes is filled up with one.
  const declaredBytes = pixels.length;
  if (declaredBytes === expectedBytes || declaredBytes === expectedBytes + 1) return;
  throw refuseFile(name, {
    code: "file.impossibleSize",
    state: `its size needs ${expectedBytes} bytes of picture and it declares ${declaredBytes}; export the film again`,
    facts: { expectedBytes, declaredBytes },
  });
}

function colourLayoutOf(dataSet: DataSet, pixels: number): ColourLayout {
  return dataSet.uint16("x00280006") === 1 ? { step: 1, apart: pixels } : { step: 3, apart: 1 };
}
