import dicomParser, { type DataSet } from "dicom-parser";
import { Refusal } from "../core/refusal.ts";
import { type DicomPicture, dicomPictureOf, endsInHeader } from "./dicom-picture.ts";
import { dicomSamplesOf, signedOffsetOf } from "./dicom-samples.ts";
import { dicomTechnicalOf, modalityScaleOf } from "./dicom-technical.ts";
import type { FilmLimits } from "./film-limits.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { InflatedTooLarge, inflateWithin } from "./inflate-within.ts";
import { luminanceOf } from "./luminance.ts";
import { readOrRefuse, refuseFile } from "./refuse-file.ts";

/**
 * The film in a DICOM file with uncompressed pixels: implicit or explicit little endian, big endian or deflated;
 * 8 or 16 bits allocated, 1 to 16 stored, signed or not; MONOCHROME1, MONOCHROME2 or RGB; one frame.
 * Takes the file's bytes, its name for messages, and the limits.
 * Gives the stored samples before any lookup table, and what the file says of how it was made. No attribute of the
 * patient is read.
 * @throws Refusal `file.damaged`, `file.truncated`, `file.impossibleSize`, `file.unsupported`, `file.tooLarge`.
 */
export function decodeDicom(bytes: Uint8Array, name: string, limits: FilmLimits): FilmPixels {
  try {
    return readOrRefuse(name, damaged, () => {
      const dataSet = parsed(bytes, name, limits);
      return filmOf(dataSet, dicomPictureOf(dataSet, name, limits));
    });
  } catch (refusal) {
    // The parser says only in words that it ran off the end.
    if (refusal instanceof Refusal && refusal.cause instanceof Error && ranOff.test(refusal.cause.message))
      throw endsInHeader(name, bytes.length, refusal.cause);
    throw refusal;
  }
}

const damaged = { code: "file.damaged", state: "its DICOM data are damaged; export the film again" } as const;
const ranOff = /past end|overread|overrun|cannot be greater than or equal to/;
const pixelData = "x7fe00010";

function parsed(bytes: Uint8Array, name: string, limits: FilmLimits): DataSet {
  return dicomParser.parseDicom(bytes, {
    untilTag: pixelData,
    inflater: (packed, position) => unpacked(packed, position, { name, limits }),
  });
}

/** The whole file with its data set unpacked, as the parser wants it. */
function unpacked(
  bytes: Uint8Array,
  position: number,
  { name, limits }: { name: string; limits: FilmLimits },
): Uint8Array {
  const parts = [bytes.subarray(0, position)];
  try {
    const packed = [bytes.subarray(position)];
    inflateWithin(packed, { format: "raw", limit: limits.maxBytes, take: (part) => parts.push(part) });
  } catch (cause) {
    if (!(cause instanceof InflatedTooLarge)) throw cause;
    const state = `unpacked it has more than ${limits.maxBytes} bytes, which is the limit`;
    throw refuseFile(name, { code: "file.tooLarge", state, facts: { limit: limits.maxBytes }, cause });
  }
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function filmOf(dataSet: DataSet, picture: DicomPicture): FilmPixels {
  const { columns, rows, bitsStored, colour } = picture;
  const samples = dicomSamplesOf(picture);
  const offset = signedOffsetOf(bitsStored, picture.signed);
  const scale = modalityScaleOf(dataSet, offset);
  // A negative slope turns bright into dark; the samples stay as stored, so what is said of them is turned instead.
  const turned = scale !== undefined && scale.slope < 0;
  const darkIsHigh = (picture.photometric === "MONOCHROME1") !== turned;
  return {
    columns,
    rows,
    bitsStored,
    samples: colour === undefined ? samples : luminanceOf(samples, colour, columns * rows),
    photometric: darkIsHigh ? "MONOCHROME1" : "MONOCHROME2",
    technical: { ...dicomTechnicalOf(dataSet, offset), wasColour: colour !== undefined },
  };
}
