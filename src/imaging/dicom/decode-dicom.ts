import dicomParser, { type DataSet } from "dicom-parser";
import { Refusal } from "../../core/refusal.ts";
import type { FilmLimits } from "../film-limits.ts";
import type { FilmPixels } from "../film-pixels.ts";
import { readOrRefuse, refuseFile } from "../refuse-file.ts";
import { dicomCellsOf } from "./dicom-cells.ts";
import { dicomFilmOf } from "./dicom-film.ts";
import { dicomPictureOf, endsInHeader } from "./dicom-picture.ts";
import { inflatedDataSet } from "./inflated-data-set.ts";
import type { UnpackingFrame } from "./packed-frame.ts";
import { unpackedHeader } from "./unpacked-header.ts";

/**
 * The film in a DICOM file: uncompressed (little or big endian, deflated), run-length packed, JPEG (baseline, extended,
 * lossless), JPEG-LS or JPEG 2000; 8 or 16 bits allocated, 1 to 16 stored, signed or not; grey, palette or colour; one
 * frame, in one fragment or several.
 * Takes the file's bytes, and what it is decoded for.
 * Gives the samples, and what the file says of how it was made. They are as stored, before any window; a modality table
 * alone has been applied. No attribute of the patient is read.
 * @throws Refusal `file.damaged`, `file.truncated`, `file.impossibleSize`, `file.unsupported`, `file.tooLarge`.
 */
export async function decodeDicom(bytes: Uint8Array, about: UnpackingFrame): Promise<FilmPixels> {
  const { name, limits } = about;
  try {
    const dataSet = readOrRefuse(name, damaged, () => parsed(bytes, name, limits));
    const picture = readOrRefuse(name, damaged, () => dicomPictureOf(dataSet, name, limits));
    const cells = await dicomCellsOf(dataSet.byteArray, picture, about);
    return readOrRefuse(name, damaged, () => dicomFilmOf({ dataSet, picture, cells, name }));
  } catch (refusal) {
    throw refusal instanceof Refusal && refusal.cause instanceof Error ? worded(refusal, bytes, name) : refusal;
  }
}

const damaged = { code: "file.damaged", state: "its DICOM data are damaged; export the film again" } as const;
const noSyntax = /missing required meta header attribute 0002,0010/;
const ranOff = /past end|overread|overrun|cannot be greater than or equal to/;
const pixelData = "x7fe00010";

/** The parser says only in words what is wrong. */
function worded(refusal: Refusal, bytes: Uint8Array, name: string): Error {
  const { cause } = refusal;
  if (!(cause instanceof Error)) return refusal;
  if (ranOff.test(cause.message)) return endsInHeader(name, bytes.length, cause);
  if (!noSyntax.test(cause.message)) return refusal;
  const state = "its header does not say how it is written (no transfer syntax); export the film again";
  return refuseFile(name, { code: "file.damaged", state, cause });
}

function parsed(bytes: Uint8Array, name: string, limits: FilmLimits): DataSet {
  const header = unpackedHeader(bytes);
  const whole = header === undefined ? bytes : inflatedDataSet(bytes, header, { name, limits });
  return dicomParser.parseDicom(whole, { untilTag: pixelData });
}
