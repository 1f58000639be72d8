import { useEffect, useRef } from "react";
import type { FilmLook } from "../../../imaging/looked-at.ts";
import { plainLook } from "../kernels/film-look.ts";
import type { Matrix } from "../kernels/film-placement.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import type { OpenedFilm } from "../workers/pixels-messages.ts";
import type { PixelsLine } from "./use-film-pixels.ts";

interface FilmCanvasOptions {
  readonly film: OpenedFilm;
  readonly line: PixelsLine;
  readonly window: GreyWindow;
  readonly look?: FilmLook | undefined;
  readonly matrix: Matrix;
  /** A hand is changing window or look: as many pixels as the screen shows are enough until it rests. */
  readonly isMoving?: boolean | undefined;
}

/** From this zoom on a pixel is shown as what it is, a square. */
export const squaresFrom = 3;

/** The matrix for a picture that begins at its corner; the film's (0,0) is the centre of its first pixel, half a pixel on. */
export const filmMatrix = ([a, b, c, d, e, f]: Matrix): Matrix => [a, b, c, d, e - (a + c) / 2, f - (b + d) / 2];

/** The film under its window. A new window or look is drawn by the worker; moving and zooming only move what is drawn. */
export function FilmCanvas({ film, line, window, look = plainLook, matrix, isMoving = false }: FilmCanvasOptions) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const zoom = Math.hypot(matrix[0], matrix[1]) * devicePixelRatio;
  useDrawing(canvas, line, { window, look, everyNth: isMoving ? Math.max(1, Math.floor(1 / zoom)) : 1 });
  return (
    <canvas
      ref={canvas}
      className="film-canvas"
      style={{
        width: film.columns,
        height: film.rows,
        transform: `matrix(${filmMatrix(matrix).join(", ")})`,
        imageRendering: Math.hypot(matrix[0], matrix[1]) >= squaresFrom ? "pixelated" : "auto",
      }}
    />
  );
}

interface Wanted {
  readonly window: GreyWindow;
  readonly look: FilmLook;
  readonly everyNth: number;
}

/** Draws one picture at a time; of those that are wanted meanwhile only the last. */
function useDrawing(canvas: CanvasRef, line: PixelsLine, { window, look, everyNth }: Wanted): void {
  const wanted = useRef<Wanted | undefined>(undefined);
  const busy = useRef(false);
  const { centre, width, invert } = window;
  const { gamma, localContrast, sharpening } = look;
  const { amount, radiusPx } = sharpening;
  useEffect(() => {
    const shown = { gamma, localContrast, sharpening: { amount, radiusPx } };
    wanted.current = { window: { centre, width, invert }, look: shown, everyNth };
    if (busy.current) return;
    busy.current = true;
    void drawWhileWanted(canvas, line, wanted).finally(() => {
      busy.current = false;
    });
  }, [canvas, line, centre, width, invert, gamma, localContrast, amount, radiusPx, everyNth]);
}

type CanvasRef = React.RefObject<HTMLCanvasElement | null>;

async function drawWhileWanted(
  canvas: CanvasRef,
  line: PixelsLine,
  wanted: React.RefObject<Wanted | undefined>,
): Promise<void> {
  while (wanted.current !== undefined) {
    const asked = wanted.current;
    wanted.current = undefined;
    const answer = await line.ask({ ask: "draw", ...asked }).catch(() => undefined);
    if (answer?.is === "drawn" && canvas.current !== null) show(canvas.current, answer.bitmap);
  }
}

/** Puts a picture on the screen, and says so on the canvas for what shows a part of it elsewhere. */
function show(canvas: HTMLCanvasElement, bitmap: ImageBitmap): void {
  if (canvas.width !== bitmap.width) canvas.width = bitmap.width;
  if (canvas.height !== bitmap.height) canvas.height = bitmap.height;
  canvas.getContext("bitmaprenderer")?.transferFromImageBitmap(bitmap);
  canvas.dispatchEvent(new Event("drawn"));
}
