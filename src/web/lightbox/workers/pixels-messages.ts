import type { FilmLook } from "../../../imaging/looked-at.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";

/** What the pixels worker is asked. */
export type PixelsQuestion =
  | { readonly ask: "open"; readonly bytes: ArrayBuffer; readonly name: string }
  | DrawQuestion
  /** The stored value of one pixel, counted row by row. */
  | { readonly ask: "sample"; readonly pixel: number }
  | { readonly ask: "samples" };

/** How the film is to be drawn. */
interface DrawQuestion {
  readonly ask: "draw";
  readonly window: GreyWindow;
  readonly look: FilmLook;
  /** Every second, third .. pixel is enough, as while a hand still moves. */
  readonly everyNth: number;
}

/** A film that was opened: its size, the window to begin with, and what the file says of itself. */
export interface OpenedFilm {
  readonly columns: number;
  readonly rows: number;
  readonly bitsStored: number;
  readonly window: GreyWindow;
  readonly photometric: "MONOCHROME1" | "MONOCHROME2";
  /** What the file says in a way that can't be, and what was left out for it. */
  readonly leftOut?: readonly string[];
}

/** What the pixels worker answers. */
export type PixelsAnswer =
  | { readonly is: "opened"; readonly film: OpenedFilm }
  | { readonly is: "drawn"; readonly bitmap: ImageBitmap; readonly everyNth: number }
  | { readonly is: "sample"; readonly value: number }
  | { readonly is: "samples"; readonly samples: Uint16Array };
