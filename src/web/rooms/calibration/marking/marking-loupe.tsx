import { useEffect, useRef } from "react";
import { type Matrix, placementMatrix, toFilm, toScreen } from "../../../lightbox/kernels/film-placement.ts";
import type { FilmSize } from "../../../lightbox/kernels/film-point.ts";
import { Crosshair } from "../../../lightbox/view/crosshair.tsx";
import { filmMatrix, squaresFrom } from "../../../lightbox/view/film-canvas.tsx";
import type { MarkingFilm } from "./use-marking-film.ts";

/** Across, in pixels of the screen. */
const across = 220;

interface MarkingLoupeOptions {
  readonly film: MarkingFilm;
  readonly size: FilmSize;
  readonly times: number;
}

/** A round glass that enlarges what is under the crosshair or the pointer; it stands beside the place, so that nothing hides it. */
export function MarkingLoupe({ film, size, times }: MarkingLoupeOptions) {
  const { placing, crosshair, pointer } = film;
  const canvas = useRef<HTMLCanvasElement>(null);
  const at = crosshair ?? (placing && pointer && toFilm(placing.placement, placing.pane, pointer));
  const zoom = (placing?.placement.zoom ?? 1) * times;
  const matrix =
    placing && at && placementMatrix({ ...placing.placement, zoom, centre: at }, { width: across, height: across });
  useEffect(() => {
    const draw = () => enlarge(film, canvas.current, { matrix, zoom, size });
    draw();
    // A new window is drawn aside and comes a little later than what asked for it.
    const later = [60, 250].map((milliseconds) => setTimeout(draw, milliseconds));
    return () => later.forEach(clearTimeout);
  });
  if (placing === undefined || at === undefined || matrix === undefined) return null;
  const { x, y } = toScreen(placing.placement, placing.pane, at);
  const beside = x + 40 + across < placing.pane.width ? x + 40 : x - 40 - across;
  const top = Math.min(Math.max(8, y - across / 2), placing.pane.height - across - 8);
  return (
    <div className="marking-loupe" aria-hidden="true" style={{ left: beside, top, width: across, height: across }}>
      <canvas ref={canvas} width={across} height={across} />
      <svg width={across} height={across} className="film-overlay" aria-hidden="true">
        <g transform={`matrix(${matrix.join(" ")})`} className="drawing">
          <Crosshair at={at} unit={1 / zoom} />
        </g>
      </svg>
      <span>{times}×</span>
    </div>
  );
}

interface Enlarging {
  readonly matrix: Matrix | undefined;
  readonly zoom: number;
  readonly size: FilmSize;
}

function enlarge(film: MarkingFilm, into: HTMLCanvasElement | null, { matrix, zoom, size }: Enlarging): void {
  const drawn = film.pane.element.current?.querySelector<HTMLCanvasElement>("canvas.film-canvas");
  const paper = into?.getContext("2d");
  if (!drawn || !paper || !matrix || drawn.width === 0) return;
  paper.setTransform(1, 0, 0, 1, 0, 0);
  paper.fillStyle = "#000";
  paper.fillRect(0, 0, across, across);
  paper.setTransform(...filmMatrix(matrix));
  paper.imageSmoothingEnabled = zoom < squaresFrom;
  paper.drawImage(drawn, 0, 0, size.columns, size.rows);
}
