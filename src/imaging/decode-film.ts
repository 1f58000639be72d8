import { decodeBmp } from "./decode-bmp.ts";
import { decodePng } from "./decode-png.ts";
import { decodeDicom } from "./dicom/decode-dicom.ts";
import { fileKindOf } from "./file-kind.ts";
import { type FilmLimits, filmLimits } from "./film-limits.ts";
import type { FilmPixels } from "./film-pixels.ts";
import { decodeJpeg } from "./jpeg/decode-jpeg.ts";
import { refuseFile } from "./refuse-file.ts";
import { decodeTiff } from "./tiff/decode-tiff.ts";
import type { LoadCodec } from "./wasm-codec.ts";

/** How a film is decoded where the usual way will not do. */
export interface DecodeOptions extends Partial<FilmLimits> {
  /** In a browser: who brings a codec's WebAssembly. Node finds it in the package. */
  readonly loadCodec?: LoadCodec;
}

/**
 * The film in a file, told from its content and never from its name.
 * Takes the file's bytes (DICOM, PNG, JPEG, TIFF or BMP), its name for messages, and limits other than the usual.
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
  const about = { name, limits, loadCodec: options.loadCodec };
  switch (found.kind) {
    case "dicom":
      return decodeDicom(bytes, about);
    case "png":
      return decodePng(bytes, name, limits);
    case "jpeg":
      return decodeJpeg(bytes, about);
    case "tiff":
      return decodeTiff(bytes, name, limits);
    case "bmp":
      return decodeBmp(bytes, name, limits);
    case "picture":
      throw refuseFile(name, {
        code: "file.unsupported",
        state: `it is ${found.looksLike}, which is not read; save it as PNG, or export the film as DICOM`,
      });
    case "other":
      throw refuseFile(name, {
        code: "file.notImage",
        state: `it is not a picture but looks like ${found.looksLike}; choose a DICOM, PNG, JPEG, TIFF or BMP file`,
      });
  }
}
