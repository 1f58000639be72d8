import jpegLsUrl from "@cornerstonejs/codec-charls/decodewasm?url";
import jpegUrl from "@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasm?url";
import jpeg2000Url from "@cornerstonejs/codec-openjpeg/decodewasm?url";
import { Refusal } from "../../../core/refusal.ts";
import { windowOf } from "../../../imaging/auto-window.ts";
import { decodeFilm } from "../../../imaging/decode-film.ts";
import type { FilmPixels } from "../../../imaging/film-pixels.ts";
import { windowToGrey } from "../../../imaging/window-to-grey.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import type { OpenedFilm, PixelsAnswer, PixelsQuestion } from "./pixels-messages.ts";
import { type Answered, answerQuestions } from "./worker-end.ts";

/** A canvas takes no longer side everywhere; a larger picture is drawn from every second, third .. sample. */
const longestSide = 8_192;
const byteOf = { black: 0, opaque: 0xff000000, grey: 0x010101 } as const;

let film: FilmPixels | undefined;

answerQuestions<PixelsQuestion, PixelsAnswer>(async (question): Promise<Answered<PixelsAnswer>> => {
  if (question.ask === "open") {
    film = await decodeFilm(new Uint8Array(question.bytes), question.name, { loadCodec });
    return { answer: { is: "opened", film: openedFilm(film) } };
  }
  if (film === undefined) throw new Refusal("file.missing", "Cannot draw the film: none is open");
  if (question.ask === "samples") {
    const samples = film.samples.slice();
    return { answer: { is: "samples", samples }, handedOver: [samples.buffer] };
  }
  const { bitmap, everyNth } = await drawn(film, question.window);
  return { answer: { is: "drawn", bitmap, everyNth }, handedOver: [bitmap] };
});

const codecs = { jpeg: jpegUrl, jpegLs: jpegLsUrl, jpeg2000: jpeg2000Url } as const;

async function loadCodec(codec: keyof typeof codecs): Promise<Uint8Array> {
  const response = await fetch(codecs[codec]);
  if (response.ok) return new Uint8Array(await response.arrayBuffer());
  throw new Refusal("file.missing", "Cannot unpack this film: a file of the program is missing; build it again");
}

function openedFilm(opened: FilmPixels): OpenedFilm {
  const { columns, rows, bitsStored, photometric } = opened;
  const { center, width } = windowOf(opened);
  return { columns, rows, bitsStored, photometric, window: { centre: center, width, invert: false } };
}

/** The film under a window as a picture for the screen, row by row through one table from samples to grey. */
async function drawn({ columns, rows, samples, photometric }: FilmPixels, window: GreyWindow) {
  const everyNth = Math.ceil(Math.max(columns, rows) / longestSide);
  const [across, down] = [Math.ceil(columns / everyNth), Math.ceil(rows / everyNth)];
  const colours = coloursOf(window, photometric);
  const pixels = new Uint32Array(across * down);
  for (let row = 0; row < down; row++) {
    const from = row * everyNth * columns;
    for (let column = 0; column < across; column++)
      pixels[row * across + column] = colours[samples[from + column * everyNth] ?? 0] ?? byteOf.opaque;
  }
  const picture = new ImageData(new Uint8ClampedArray(pixels.buffer), across, down);
  return { bitmap: await createImageBitmap(picture), everyNth };
}

function coloursOf({ centre, width, invert }: GreyWindow, photometric: FilmPixels["photometric"]): Uint32Array {
  const greys = windowToGrey({ center: centre, width: Math.max(1, width), function: "linear" }, photometric);
  // The four bytes of a pixel as one number: red, green and blue alike, and opaque.
  return Uint32Array.from(greys, (grey) => (byteOf.opaque | ((invert ? 255 - grey : grey) * byteOf.grey)) >>> 0);
}
