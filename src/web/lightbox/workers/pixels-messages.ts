import type { GreyWindow } from "../kernels/grey-window.ts";

/** What the pixels worker is asked. */
export type PixelsQuestion =
  | { readonly ask: "open"; readonly bytes: ArrayBuffer; readonly name: string }
  | { readonly ask: "draw"; readonly window: GreyWindow }
  | { readonly ask: "samples" };

/** A film that was opened: its size, the window to begin with, and what the file says of itself. */
export interface OpenedFilm {
  readonly columns: number;
  readonly rows: number;
  readonly bitsStored: number;
  readonly window: GreyWindow;
  readonly photometric: "MONOCHROME1" | "MONOCHROME2";
}

/** What the pixels worker answers. */
export type PixelsAnswer =
  | { readonly is: "opened"; readonly film: OpenedFilm }
  | { readonly is: "drawn"; readonly bitmap: ImageBitmap; readonly everyNth: number }
  | { readonly is: "samples"; readonly samples: Uint16Array };
