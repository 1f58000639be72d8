import { useRef } from "react";
import type { ImagePoint } from "../../../core/units.ts";
import type { Film } from "../kernels/film-name.ts";
import { filmName } from "../kernels/film-name.ts";
import { toFilm, toScreen } from "../kernels/film-placement.ts";
import { inFilm, pointOf } from "../kernels/film-point.ts";
import type { MmPerPx } from "../kernels/pane-group.ts";
import { FilmPane } from "../view/film-pane.tsx";
import { useWheelZoom } from "../view/pointing.ts";
import { useFilmView } from "../view/use-film-view.ts";
import type { PaneGroupUse } from "../view/use-pane-group.ts";
import type { PlacementUse } from "../view/use-placement.ts";
import { numbered, type Side, sides } from "./comparison.ts";
import { type LandmarkPane, landmarkKey, reachOn } from "./landmark-keys.ts";
import type { LandmarkUse } from "./use-landmarks.ts";

interface LandmarkPanesOptions {
  readonly films: Readonly<Record<Side, Film>>;
  readonly mmPerPx: Readonly<Record<Side, MmPerPx | undefined>>;
  readonly group: PaneGroupUse;
  readonly presentedOn: string;
  readonly use: LandmarkUse;
}

/** Both films side by side; a place is marked on one and then on the other. */
export function LandmarkPanes({ films, mmPerPx, group, presentedOn, use }: LandmarkPanesOptions) {
  return (
    <div className="landmark-panes">
      {sides.map((side) => (
        <OnePane key={films[side].id} {...{ side, group, presentedOn, use }} film={films[side]} scale={mmPerPx[side]} />
      ))}
    </div>
  );
}

interface OnePaneOptions {
  readonly side: Side;
  readonly film: Film;
  readonly scale: MmPerPx | undefined;
  readonly group: PaneGroupUse;
  readonly presentedOn: string;
  readonly use: LandmarkUse;
}

function OnePane({ side, film, scale, group, presentedOn, use }: OnePaneOptions) {
  const view = useFilmView(film, { group, mmPerPx: scale });
  const pane: LandmarkPane = { side, view, use };
  const pointer = useLandmarkPointer(pane);
  useWheelZoom(view);
  const name = filmName(film, presentedOn);
  const waits = use.work.waiting !== undefined && use.work.waiting.side !== side;
  return (
    <div className="landmark-pane" data-waits={waits}>
      <FilmPane
        view={view}
        stage={{
          ...pointer,
          role: "application",
          "aria-label": `${side === "before" ? "Before" : "After"}: ${name}, ${use.landmarks.length} landmarks`,
          "aria-describedby": `landmark-keys-${side}`,
          tabIndex: 0,
          onKeyDown: (event) => {
            if (event.target === event.currentTarget && landmarkKey(pane, event.nativeEvent)) event.preventDefault();
          },
        }}
        drawing={(_placing, unit) => <LandmarksDrawn pane={pane} unit={unit} />}
        above={(placing) => <LandmarkNumbers pane={pane} placing={placing} />}
      >
        <span id={`landmark-keys-${side}`} className="unseen">
          Arrow keys move the crosshair by one pixel, with Shift by ten, with Alt by a quarter. Space marks a place or
          takes hold of a landmark, N goes to the next, Delete takes the chosen one off both films, Escape lets go.
        </span>
      </FilmPane>
      <p className="pane-words">
        <span className="pane-side">{side === "before" ? "Before" : "After"}</span> {name}
        {waits && <strong>: mark the same place here</strong>}
      </p>
    </div>
  );
}

/** Press, drag and let go; the middle button or Shift moves the film. */
function useLandmarkPointer(pane: LandmarkPane) {
  const latest = useRef(pane);
  latest.current = pane;
  const pushing = useRef<{ x: number; y: number } | undefined>(undefined);
  const placeOf = (event: React.PointerEvent): ImagePoint | undefined => {
    const { view } = latest.current;
    if (view.placing === undefined) return undefined;
    return inFilm(toFilm(view.placing.placement, view.placing.pane, view.pane.screenOf(event)), view.film.body);
  };
  return {
    // A press gives the focus by itself.
    onPointerDown: (event: React.PointerEvent<HTMLDivElement>) => {
      const at = placeOf(event);
      if (at === undefined || (event.button !== 0 && event.button !== 1)) return;
      event.currentTarget.focus({ preventScroll: true });
      event.currentTarget.setPointerCapture(event.pointerId);
      const { side, view, use } = latest.current;
      use.setCrosshair(side, undefined);
      if (event.button === 1 || event.shiftKey) pushing.current = view.pane.screenOf(event);
      else use.send({ is: "pressed", side, at, reachPx: reachOn(view) });
    },
    onPointerMove: (event: React.PointerEvent<HTMLDivElement>) => {
      const at = placeOf(event);
      const { side, view, use } = latest.current;
      const from = pushing.current;
      if (at === undefined) return;
      if (from === undefined) {
        if (event.buttons !== 0) use.send({ is: "moved", side, at });
        return;
      }
      const to = view.pane.screenOf(event);
      pushing.current = to;
      view.placing?.push({ x: to.x - from.x, y: to.y - from.y });
    },
    onPointerUp: () => {
      if (pushing.current === undefined) latest.current.use.send({ is: "released" });
      pushing.current = undefined;
    },
    onPointerCancel: () => {
      pushing.current = undefined;
      latest.current.use.send({ is: "takenBack" });
    },
  };
}

function LandmarksDrawn({ pane: { side, use }, unit }: { pane: LandmarkPane; unit: number }) {
  const { work, landmarks, crosshairs } = use;
  const waiting = [work.waiting, work.pressed].flatMap((one) => (one?.side === side ? [one.at] : []));
  const crosshair = crosshairs[side];
  return (
    <g className="landmarks">
      {numbered(landmarks).map(({ number, places }) => (
        <Spot
          key={number}
          at={pointOf(places[side])}
          unit={unit}
          state={number - 1 === work.chosen ? "chosen" : "stands"}
        />
      ))}
      {waiting.map((at) => (
        <Spot key="waiting" at={at} unit={unit} state="waits" />
      ))}
      {crosshair !== undefined && <Crosshair at={crosshair} unit={unit} />}
    </g>
  );
}

/** A landmark leaves its middle open, so that the place itself can be seen; one that waits has a broken ring. */
const Spot = ({ at, unit, state }: { at: ImagePoint; unit: number; state: "stands" | "chosen" | "waits" }) => {
  const { column, row } = at;
  const [gap, arm] = [3 * unit, 9 * unit];
  const d = `M${column - arm} ${row}H${column - gap}M${column + gap} ${row}H${column + arm}M${column} ${row - arm}V${row - gap}M${column} ${row + gap}V${row + arm}`;
  return (
    <g className="landmark" data-state={state}>
      <circle className="mark-rim landmark-ring" cx={column} cy={row} r={7 * unit} />
      <circle className="mark-line landmark-ring" cx={column} cy={row} r={7 * unit} />
      <path className="mark-rim" d={d} />
      <path className="mark-line" d={d} />
    </g>
  );
};

const Crosshair = ({ at: { column, row }, unit }: { at: ImagePoint; unit: number }) => {
  const [gap, arm] = [4 * unit, 18 * unit];
  const d = `M${column - arm} ${row}H${column - gap}M${column + gap} ${row}H${column + arm}M${column} ${row - arm}V${row - gap}M${column} ${row + gap}V${row + arm}`;
  return (
    <g className="drawing" data-part="crosshair">
      <path className="mark-rim" d={d} />
      <path className="mark-line crosshair" d={d} />
    </g>
  );
};

function LandmarkNumbers({ pane: { side, use }, placing }: { pane: LandmarkPane; placing: PlacementUse }) {
  return numbered(use.landmarks).map(({ number, places }) => {
    const { x, y } = toScreen(placing.placement, placing.pane, pointOf(places[side]));
    const isChosen = number - 1 === use.work.chosen;
    return (
      <text key={number} className="mark-name landmark-number" data-chosen={isChosen} x={x + 11} y={y - 9}>
        {number}
      </text>
    );
  });
}
