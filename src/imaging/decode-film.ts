import { decodeDicom } from "./decode-dicom.ts";
import { decodeJpeg } from "./decode-jpeg.ts";
import { decodePng } from "./decode-png.ts";
import { fileKindOf } from "./file-kind.ts";
import { type FilmLimits, filmLimits } from "./film-limits.ts";
import type { FilmPixels } from "./film-pixels.ts";
import type { LoadWasm } from "./jpeg-codec.ts";
import { refuseFile } from "./refuse-file.ts";

/** How a film is decoded where the usual way will not do. */
export interface DecodeOptions extends Partial<FilmLimits> {
  /** In a browser: who brings the JPEG codec's WebAssembly. Node finds it in the package. */
  readonly loadJpegWasm?: LoadWasm;
}

/**
 * The film in a file, told from its content and never from its name.
 * Takes the file's bytes (DICOM, PNG or JPEG), its name for messages, and limits other than the usual.
 * Gives grey samples and what the file says of how it was made; no attribute of the patient.
 * @throws Refusal `file.notImage`, `file.unsupported`, `file.truncated`, `file.damaged`, `file.impossibleSize`,
 * `file.tooLarge`; nothing else.
 */
export async function decodeFilm(bytes: Uint8Array, name: string, options: DecodeOptions = {}): Promise<FilmPixels> {
  const limits = { ...filmLimits, ...options };
  if (bytes.length > limits.maxBytes)
    throw refuseFile(name, {
      code: "file.tooLarge",
      state: `it has ${bytes.length} bytes, and a film may have ${limits.maxBytes}`,
      facts: { foundBytes: bytes.length, limit: limits.maxBytes },
    });
  const found = fileKindOf(bytes);
  switch (found.kind) {
    case "dicom":
      return decodeDicom(bytes, name, limits);
    case "png":
      return decodePng(bytes, name, limits);
    case "jpeg":
      return decodeJpeg(bytes, name, limits, options.loadJpegWasm);
    case "picture":
      throw refuseFile(name, {
        code: "file.unsupported",
        state: `it is ${found.looksLike}, which is not read; save it as PNG, or export the film as DICOM`,
      });
    case "other":
      throw refuseFile(name, {
        code: "file.notImage",
        state: `it is not a picture but looks like ${found.looksLike}; choose a DICOM, PNG or JPEG file`,
      });
  }
}
