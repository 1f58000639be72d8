import jpegLsUrl from "@cornerstonejs/codec-charls/decodewasm?url";
import jpegUrl from "@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasm?url";
import jpeg2000Url from "@cornerstonejs/codec-openjpeg/decodewasm?url";
import { Refusal } from "../../../core/refusal.ts";
import { windowOf } from "../../../imaging/auto-window.ts";
import { decodeFilm } from "../../../imaging/decode-film.ts";
import type { FilmPixels } from "../../../imaging/film-pixels.ts";
import { type DrawnPixels, FilmDrawing } from "./film-drawing.ts";
import type { OpenedFilm, PixelsAnswer, PixelsQuestion } from "./pixels-messages.ts";
import { type Answered, answerQuestions } from "./worker-end.ts";

/** A canvas takes no longer side everywhere; a larger picture is drawn from every second, third .. sample. */
const longestSide = 8_192;

let film: FilmPixels | undefined;
let drawing: FilmDrawing | undefined;

answerQuestions<PixelsQuestion, PixelsAnswer>(async (question): Promise<Answered<PixelsAnswer>> => {
  if (question.ask === "open") {
    film = await decodeFilm(new Uint8Array(question.bytes), question.name, { loadCodec });
    drawing = new FilmDrawing(film);
    return { answer: { is: "opened", film: openedFilm(film) } };
  }
  if (film === undefined || drawing === undefined)
    throw new Refusal("file.missing", "Cannot draw the film: none is open");
  switch (question.ask) {
    case "samples": {
      const samples = film.samples.slice();
      return { answer: { is: "samples", samples }, handedOver: [samples.buffer] };
    }
    case "sample":
      return { answer: { is: "sample", value: film.samples[question.pixel] ?? 0 } };
    case "draw": {
      const everyNth = Math.max(question.everyNth, Math.ceil(Math.max(film.columns, film.rows) / longestSide));
      const bitmap = await pictureOf(drawing.drawThin(question, everyNth));
      return { answer: { is: "drawn", bitmap, everyNth }, handedOver: [bitmap] };
    }
  }
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
  const { leftOut } = opened.technical;
  return {
    ...{ columns, rows, bitsStored, photometric, window: { centre: center, width, invert: false } },
    ...(leftOut === undefined ? {} : { leftOut }),
  };
}

const pictureOf = ({ columns, rows, pixels }: DrawnPixels): Promise<ImageBitmap> =>
  createImageBitmap(new ImageData(new Uint8ClampedArray(pixels.buffer), columns, rows));
