import { useMemo } from "react";
import type { CropBox } from "../../kernels/crop-box.ts";
import { fitted, placementMatrix, toFilm } from "../../kernels/film-placement.ts";
import { filmPoint } from "../../kernels/film-point.ts";
import type { GreyWindow } from "../../kernels/grey-window.ts";
import type { CropEvent, CropState } from "../../tools/crop-tool.ts";
import type { OpenedFilm } from "../../workers/pixels-messages.ts";
import { FilmCanvas } from "../film-canvas.tsx";
import type { PixelsLine } from "../use-film-pixels.ts";
import { usePane } from "../use-pane.ts";

interface CropPaneOptions {
  readonly film: OpenedFilm;
  readonly line: PixelsLine;
  readonly window: GreyWindow;
  readonly state: CropState;
  readonly send: (event: CropEvent, nearPx: number) => void;
}

const upright = { quarterTurns: 0, mirrored: false } as const;
const nearOnScreen = 10;
const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The picture of a file with the part that becomes the film; what is left out lies in the dark. */
export function CropPane({ film, line, window, state, send }: CropPaneOptions) {
  const pane = usePane();
  const placing = useMemo(() => {
    if (pane.size === undefined) return undefined;
    const placement = fitted(film, pane.size, upright);
    return { placement, matrix: placementMatrix(placement, pane.size), size: pane.size };
  }, [film, pane.size]);
  const nearPx = nearOnScreen / (placing?.placement.zoom ?? 1);
  const at = (event: React.PointerEvent) => {
    if (placing === undefined) return undefined;
    const { column, row } = toFilm(placing.placement, placing.size, pane.screenOf(event));
    // A crop is counted from the picture's edge, which is half a pixel before the first centre.
    return filmPoint(column + 0.5, row + 0.5);
  };
  const sendAt = (is: "pressed" | "moved", event: React.PointerEvent) => {
    const place = at(event);
    if (place !== undefined) send({ is, at: place }, nearPx);
  };
  return (
    <div
      ref={pane.element}
      className="crop-pane"
      role="application"
      aria-label={cropWords(state.box, film)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: arrows move and resize the part of the picture
      tabIndex={0}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        sendAt("pressed", event);
      }}
      onPointerMove={(event) => sendAt("moved", event)}
      onPointerUp={() => send({ is: "released" }, nearPx)}
      onKeyDown={(event) => {
        const arrow = arrows[event.key];
        if (arrow === undefined) return;
        event.preventDefault();
        const held = { shift: event.shiftKey, alt: event.altKey };
        send({ is: "arrow", columns: arrow[0], rows: arrow[1], held }, nearPx);
      }}
    >
      {placing && (
        <>
          <FilmCanvas film={film} line={line} window={window} matrix={placing.matrix} />
          <svg className="film-overlay" width={placing.size.width} height={placing.size.height} aria-hidden="true">
            <g transform={`matrix(${placing.matrix.join(" ")}) translate(-0.5 -0.5)`}>
              <CropDrawing box={state.box} film={film} unit={1 / placing.placement.zoom} />
            </g>
          </svg>
        </>
      )}
    </div>
  );
}

function CropDrawing({ box, film, unit }: { box: CropBox | undefined; film: OpenedFilm; unit: number }) {
  if (box === undefined) return null;
  const { column, row, columns, rows } = box;
  const [right, lower] = [column + columns, row + rows];
  const inner = `M${column} ${row}V${lower}H${right}V${row}Z`;
  const knob = 5 * unit;
  return (
    <>
      <path className="crop-outside" d={`M0 0H${film.columns}V${film.rows}H0Z${inner}`} />
      <path className="crop-frame" d={inner} />
      {[
        [column, row],
        [right, row],
        [right, lower],
        [column, lower],
      ].map(([x = 0, y = 0]) => (
        <rect key={`${x} ${y}`} className="crop-knob" x={x - knob} y={y - knob} width={2 * knob} height={2 * knob} />
      ))}
    </>
  );
}

function cropWords(box: CropBox | undefined, film: OpenedFilm): string {
  if (box === undefined) return `The whole picture, ${film.columns} by ${film.rows} pixels; drag to take a part of it`;
  return `A part of ${box.columns} by ${box.rows} pixels from column ${box.column}, row ${box.row}; arrows move it, with Shift they resize it`;
}
