import type { FilmPixels } from "../../../imaging/film-pixels.ts";
import { localContrast } from "../../../imaging/local-contrast.ts";
import { type FilmLook, type LookPlanes, lookedAt } from "../../../imaging/looked-at.ts";
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
  readonly everyNth: number;
}

const byteOf = { opaque: 0xff000000, grey: 0x010101 } as const;

/** Draws one film under windows and looks. What is slow to make is made once and kept while amounts change. */
export class FilmDrawing {
  #even: Float32Array | undefined;
  #smooth: { readonly radiusPx: number; readonly plane: Float32Array } | undefined;
  #thin: ThinFilm | undefined;
  #seen: { readonly key: string; readonly samples: Uint16Array } | undefined;

  constructor(private readonly film: FilmPixels) {}

  /** The film as it is shown. Fails with a refusal for a look or window that is none. */
  draw({ window, look, everyNth }: Shown): DrawnPixels {
    const { columns, rows } = thinSize(this.film, everyNth);
    const colours = coloursOf(window, look, this.film.photometric);
    const samples = this.#samples(look, everyNth);
    const pixels = new Uint32Array(samples.length);
    for (let at = 0; at < samples.length; at++) pixels[at] = colours[samples[at] ?? 0] ?? byteOf.opaque;
    return { columns, rows, pixels };
  }

  #samples(look: FilmLook, everyNth: number): Uint16Array {
    const { localContrast: share, sharpening } = look;
    const key = JSON.stringify([everyNth, share, sharpening.amount && sharpening]);
    if (this.#seen?.key !== key) {
      const even = share === 0 ? undefined : this.#evened();
      const smooth = sharpening.amount === 0 ? undefined : this.#smoothed(sharpening.radiusPx);
      const thin = this.#thinned({ everyNth, even, smooth });
      this.#seen = { key, samples: lookedAt(thin.film, look, thin) };
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

  /** Film and planes with every nth pixel, kept until one of them is another. */
  #thinned({ everyNth, even, smooth }: Thinning): LookPlanes & { readonly film: FilmPixels } {
    const { film } = this;
    if (everyNth === 1) return { film, even, smooth };
    const before = this.#thin?.of;
    if (this.#thin === undefined || before?.everyNth !== everyNth || before.even !== even || before.smooth !== smooth) {
      const size = thinSize(film, everyNth);
      const thin = <Plane extends Float32Array | Uint16Array>(plane: Plane, into: Plane): Plane =>
        everyNthOf(plane, into, { ...film, everyNth });
      const empty = () => new Float32Array(size.columns * size.rows);
      this.#thin = {
        of: { everyNth, even, smooth },
        film: { ...film, ...size, samples: thin(film.samples, new Uint16Array(size.columns * size.rows)) },
        even: even && thin(even, empty()),
        smooth: smooth && thin(smooth, empty()),
      };
    }
    return this.#thin;
  }
}

/** Whole planes, of which every nth pixel is wanted. */
interface Thinning extends LookPlanes {
  readonly everyNth: number;
}

interface ThinFilm extends LookPlanes {
  readonly film: FilmPixels;
  /** What it was thinned from. */
  readonly of: Thinning;
}

const thinSize = ({ columns, rows }: { columns: number; rows: number }, everyNth: number) => ({
  columns: Math.ceil(columns / everyNth),
  rows: Math.ceil(rows / everyNth),
});

/** Fills a smaller plane with every nth pixel of every nth row. */
function everyNthOf<Plane extends Float32Array | Uint16Array>(
  plane: Plane,
  thin: Plane,
  { columns, rows, everyNth }: { columns: number; rows: number; everyNth: number },
): Plane {
  let to = 0;
  for (let row = 0; row < rows; row += everyNth)
    for (let column = 0; column < columns; column += everyNth) thin[to++] = plane[row * columns + column] ?? 0;
  return thin;
}

function coloursOf({ centre, width, invert }: GreyWindow, { gamma }: FilmLook, photometric: FilmPixels["photometric"]) {
  const greys = windowToGrey({ center: centre, width: Math.max(1, width), function: "linear" }, photometric, gamma);
  // The four bytes of a pixel as one number: red, green and blue alike, and opaque.
  return Uint32Array.from(greys, (grey) => (byteOf.opaque | ((invert ? 255 - grey : grey) * byteOf.grey)) >>> 0);
}
