import { useEffect, useRef, useSyncExternalStore } from "react";
import { placementMatrix, toScreen } from "../kernels/film-placement.ts";
import { DrawingLayer } from "./drawing-layer.tsx";
import { filmMatrix, squaresFrom } from "./film-canvas.tsx";
import type { LightBox } from "./light-box.ts";
import { MarksLayer } from "./marks-layer.tsx";

/** Across, in pixels of the screen. */
const size = 232;

/** A round glass over the film that enlarges what is under the pointer or the crosshair, with what is marked there. */
export function Loupe({ box, times }: { readonly box: LightBox; readonly times: number }) {
  const { placing, pointed, crosshair, film } = box;
  const pointer = useSyncExternalStore(pointed.watch, pointed.now);
  const at = crosshair ?? pointer?.at;
  const canvas = useRef<HTMLCanvasElement>(null);
  const zoom = (placing?.placement.zoom ?? 1) * times;
  const matrix =
    placing && at && placementMatrix({ ...placing.placement, zoom, centre: at }, { width: size, height: size });
  useEffect(() => {
    const drawn = box.pane.element.current?.querySelector<HTMLCanvasElement>("canvas.film-canvas");
    if (!drawn || !matrix) return;
    const draw = () => canvas.current && drawEnlarged(canvas.current, { drawn, matrix, film: film.body });
    draw();
    drawn.addEventListener("drawn", draw);
    return () => drawn.removeEventListener("drawn", draw);
  });
  if (placing === undefined || at === undefined || matrix === undefined) return null;
  const { x, y } = toScreen(placing.placement, placing.pane, at);
  const unit = 1 / zoom;
  return (
    <div
      className="loupe"
      aria-hidden="true"
      style={{ left: x - size / 2, top: y - size / 2, width: size, height: size }}
    >
      <canvas ref={canvas} width={size} height={size} />
      <svg className="film-overlay" width={size} height={size} aria-hidden="true">
        <g transform={`matrix(${matrix.join(" ")})`}>
          <MarksLayer
            marks={box.sight.marks ? box.shown : []}
            chosen={box.isInHand ? box.chosen : undefined}
            place={box.place}
            unit={unit}
          />
          <DrawingLayer state={box.tool.state} asking={box.asking} crosshair={crosshair} unit={unit} />
        </g>
      </svg>
      <span>{times}×</span>
    </div>
  );
}

interface Enlarging {
  readonly drawn: HTMLCanvasElement;
  readonly matrix: ReturnType<typeof placementMatrix>;
  readonly film: { readonly columns: number; readonly rows: number };
}

function drawEnlarged(into: HTMLCanvasElement, { drawn, matrix, film }: Enlarging): void {
  const paper = into.getContext("2d");
  if (paper === null || drawn.width === 0) return;
  paper.setTransform(1, 0, 0, 1, 0, 0);
  paper.fillStyle = "#0b0a0a";
  paper.fillRect(0, 0, size, size);
  paper.setTransform(...filmMatrix(matrix));
  paper.imageSmoothingEnabled = Math.hypot(matrix[0], matrix[1]) < squaresFrom;
  paper.drawImage(drawn, 0, 0, film.columns, film.rows);
}
