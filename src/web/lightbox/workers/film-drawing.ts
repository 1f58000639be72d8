import type { FilmPixels } from "../../../imaging/film-pixels.ts";
import { localContrast } from "../../../imaging/local-contrast.ts";
import { type FilmLook, lookedAt } from "../../../imaging/looked-at.ts";
import { smoothedFilm } from "../../../imaging/smoothed-film.ts";
import { windowToGrey } from "../../../imaging/window-to-grey.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";

/** A film as it is shown: four bytes a pixel, row by row. */
export interface DrawnPixels {
  readonly columns: number;
  readonly rows: number;
  readonly pixels: Uint32Array<ArrayBuffer>;
}

/** How a film is to be shown. */
interface Shown {
  readonly window: GreyWindow;
  readonly look: FilmLook;
}

const leastRadiusPx = 0.5;
const byteOf = { opaque: 0xff000000, grey: 0x010101 } as const;

/** Draws one film under windows and looks. What is slow to make is made once and kept while amounts change. */
export class FilmDrawing {
  #even: Float32Array | undefined;
  #smooth: { readonly radiusPx: number; readonly plane: Float32Array } | undefined;
  #seen: { readonly key: string; readonly samples: Uint16Array } | undefined;
  #thin: { readonly everyNth: number; readonly drawing: FilmDrawing } | undefined;

  constructor(private readonly film: FilmPixels) {}

  /** The film as it is shown. Fails with a refusal for a look or window that is none. */
  draw({ window, look }: Shown): DrawnPixels {
    const { columns, rows, photometric } = this.film;
    const colours = coloursOf(window, look, photometric);
    const samples = this.#samples(look);
    const pixels = new Uint32Array(samples.length);
    for (let at = 0; at < samples.length; at++) pixels[at] = colours[samples[at] ?? 0] ?? byteOf.opaque;
    return { columns, rows, pixels };
  }

  /**
   * The film as it is shown, from every nth pixel alone: its look is made from those as well, which is near to the look of
   * the whole film and comes at once.
   */
  drawThin({ window, look }: Shown, everyNth: number): DrawnPixels {
    if (everyNth === 1) return this.draw({ window, look });
    if (this.#thin?.everyNth !== everyNth)
      this.#thin = { everyNth, drawing: new FilmDrawing(thinFilm(this.film, everyNth)) };
    const { amount, radiusPx } = look.sharpening;
    const sharpening = { amount, radiusPx: Math.max(leastRadiusPx, radiusPx / everyNth) };
    return this.#thin.drawing.draw({ window, look: { ...look, sharpening } });
  }

  #samples(look: FilmLook): Uint16Array {
    const { localContrast: share, sharpening } = look;
    const key = JSON.stringify([share, sharpening.amount && sharpening]);
    if (this.#seen?.key !== key) {
      const even = share === 0 ? undefined : this.#evened();
      const smooth = sharpening.amount === 0 ? undefined : this.#smoothed(sharpening.radiusPx);
      this.#seen = { key, samples: lookedAt(this.film, look, { even, smooth }) };
    }
    return this.#seen.samples;
  }

  #evened(): Float32Array {
    this.#even ??= localContrast(this.film);
    return this.#even;
  }

  #smoothed(radiusPx: number): Float32Array {
    if (this.#smooth?.radiusPx !== radiusPx) this.#smooth = { radiusPx, plane: smoothedFilm(this.film, radiusPx) };
    return this.#smooth.plane;
  }
}

/** Every nth pixel of every nth row. */
function thinFilm(film: FilmPixels, everyNth: number): FilmPixels {
  const [columns, rows] = [Math.ceil(film.columns / everyNth), Math.ceil(film.rows / everyNth)];
  const samples = new Uint16Array(columns * rows);
  let to = 0;
  for (let row = 0; row < film.rows; row += everyNth)
    for (let column = 0; column < film.columns; column += everyNth)
      samples[to++] = film.samples[row * film.columns + column] ?? 0;
  return { ...film, columns, rows, samples };
}

function coloursOf({ centre, width, invert }: GreyWindow, { gamma }: FilmLook, photometric: FilmPixels["photometric"]) {
  const greys = windowToGrey({ center: centre, width: Math.max(1, width), function: "linear" }, photometric, gamma);
  const colours = new Uint32Array(greys.length);
  // The four bytes of a pixel as one number: red, green and blue alike, and opaque.
  for (let sample = 0; sample < greys.length; sample++) {
    const grey = greys[sample] ?? 0;
    colours[sample] = (byteOf.opaque | ((invert ? 255 - grey : grey) * byteOf.grey)) >>> 0;
  }
  return colours;
}
