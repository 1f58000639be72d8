import { useEffect, useRef } from "react";
import type { Matrix } from "../kernels/film-placement.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import type { OpenedFilm } from "../workers/pixels-messages.ts";
import type { PixelsLine } from "./use-film-pixels.ts";

interface FilmCanvasOptions {
  readonly film: OpenedFilm;
  readonly line: PixelsLine;
  readonly window: GreyWindow;
  readonly matrix: Matrix;
}

/** From this zoom on a pixel is shown as what it is, a square. */
const squaresFrom = 3;

/** The film under its window. A new window is drawn by the worker; moving and zooming only move what is drawn. */
export function FilmCanvas({ film, line, window, matrix }: FilmCanvasOptions) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useDrawing(canvas, line, window);
  const [a, b, c, d, e, f] = matrix;
  // The first pixel's corner is half a pixel before its centre, which is (0,0).
  const [x, y] = [e - (a + c) / 2, f - (b + d) / 2];
  return (
    <canvas
      ref={canvas}
      className="film-canvas"
      style={{
        width: film.columns,
        height: film.rows,
        transform: `matrix(${a}, ${b}, ${c}, ${d}, ${x}, ${y})`,
        imageRendering: Math.hypot(a, b) >= squaresFrom ? "pixelated" : "auto",
      }}
    />
  );
}

/** Draws one window at a time; of those that come meanwhile only the last. */
function useDrawing(canvas: React.RefObject<HTMLCanvasElement | null>, line: PixelsLine, window: GreyWindow): void {
  const wanted = useRef<GreyWindow | undefined>(undefined);
  const busy = useRef(false);
  const { centre, width, invert } = window;
  useEffect(() => {
    wanted.current = { centre, width, invert };
    if (busy.current) return;
    busy.current = true;
    void drawWhileWanted(canvas, line, wanted).finally(() => {
      busy.current = false;
    });
  }, [canvas, line, centre, width, invert]);
}

async function drawWhileWanted(
  canvas: React.RefObject<HTMLCanvasElement | null>,
  line: PixelsLine,
  wanted: React.RefObject<GreyWindow | undefined>,
): Promise<void> {
  while (wanted.current !== undefined) {
    const window = wanted.current;
    wanted.current = undefined;
    const answer = await line.ask({ ask: "draw", window }).catch(() => undefined);
    if (answer?.is === "drawn" && canvas.current !== null) show(canvas.current, answer.bitmap);
  }
}

function show(canvas: HTMLCanvasElement, bitmap: ImageBitmap): void {
  if (canvas.width !== bitmap.width) canvas.width = bitmap.width;
  if (canvas.height !== bitmap.height) canvas.height = bitmap.height;
  canvas.getContext("bitmaprenderer")?.transferFromImageBitmap(bitmap);
}
