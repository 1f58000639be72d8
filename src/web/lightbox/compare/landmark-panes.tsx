import type { ImagePoint } from "../../../core/units.ts";
import type { Film } from "../kernels/film-name.ts";
import { filmName } from "../kernels/film-name.ts";
import { toScreen } from "../kernels/film-placement.ts";
import { pointOf } from "../kernels/film-point.ts";
import type { MmPerPx } from "../kernels/pane-group.ts";
import { Crosshair } from "../view/crosshair.tsx";
import { OutlineDrawing } from "../view/drawing-layer.tsx";
import { FilmPane } from "../view/film-pane.tsx";
import { useWheelZoom } from "../view/pointing.ts";
import { useFilmView } from "../view/use-film-view.ts";
import type { PaneGroupUse } from "../view/use-pane-group.ts";
import type { PlacementUse } from "../view/use-placement.ts";
import { type FilmOutline, numbered, type Side, sides } from "./comparison.ts";
import { hardPartKey } from "./hard-part-keys.ts";
import { HardPartNames, HardPartsDrawn } from "./hard-parts-drawn.tsx";
import { type LandmarkPane, landmarkKey } from "./landmark-keys.ts";
import { useLandmarkPointer } from "./landmark-pointer.ts";
import type { HardPartUse } from "./use-hard-parts.ts";
import type { LandmarkUse } from "./use-landmarks.ts";

interface LandmarkPanesOptions {
  readonly films: Readonly<Record<Side, Film>>;
  readonly mmPerPx: Readonly<Record<Side, MmPerPx | undefined>>;
  readonly group: PaneGroupUse;
  readonly presentedOn: string;
  readonly use: LandmarkUse;
  readonly hard: HardPartUse;
  /** The parts to go by where they fall on the second film, once that is known. */
  readonly partsOnSecond: readonly FilmOutline[];
}

/** Both films side by side; a place is marked on one and then on the other, a part to go by outlined on the first. */
export function LandmarkPanes({ films, mmPerPx, group, presentedOn, ...shared }: LandmarkPanesOptions) {
  return (
    <div className="landmark-panes">
      {sides.map((side) => (
        <OnePane
          key={films[side].id}
          {...{ side, group, presentedOn, ...shared }}
          film={films[side]}
          scale={mmPerPx[side]}
        />
      ))}
    </div>
  );
}

interface OnePaneOptions extends Omit<LandmarkPanesOptions, "films" | "mmPerPx"> {
  readonly side: Side;
  readonly film: Film;
  readonly scale: MmPerPx | undefined;
}

function OnePane({ side, film, scale, group, presentedOn, use, hard, partsOnSecond }: OnePaneOptions) {
  const view = useFilmView(film, { group, mmPerPx: scale });
  const pane: LandmarkPane = { side, view, use };
  const pointer = useLandmarkPointer(pane, hard);
  const outlines = hard.isOn && side === "before";
  const parts = { outlines: side === "before" ? hard.outlines : partsOnSecond, chosen: hard.chosen };
  useWheelZoom(view);
  const name = filmName(film, presentedOn);
  const waits = use.work.waiting !== undefined && use.work.waiting.side !== side;
  return (
    <div className="landmark-pane" data-waits={hard.isOn ? outlines : waits}>
      <FilmPane
        view={view}
        stage={{
          ...pointer,
          role: "application",
          "aria-label": `${side === "before" ? "Before" : "After"}: ${name}, ${use.landmarks.length} landmarks`,
          "aria-describedby": `landmark-keys-${side}`,
          tabIndex: 0,
          onKeyDown: (event) => {
            if (event.target !== event.currentTarget) return;
            const press = event.nativeEvent;
            if (outlines ? hardPartKey(pane, hard, press) : landmarkKey(pane, press)) event.preventDefault();
          },
        }}
        drawing={(_placing, unit) => (
          <>
            <HardPartsDrawn {...parts} />
            <LandmarksDrawn pane={pane} unit={unit} />
            {outlines && (
              <g className="drawing">
                <OutlineDrawing state={hard.drawing} unit={unit} />
              </g>
            )}
          </>
        )}
        above={(placing) => (
          <>
            <HardPartNames {...parts} placing={placing} />
            <LandmarkNumbers pane={pane} placing={placing} />
          </>
        )}
      >
        <span id={`landmark-keys-${side}`} className="unseen">
          {outlines ? keysOfOutlining : keysOfLandmarks}
        </span>
      </FilmPane>
      <p className="pane-words">
        <span className="pane-side">{side === "before" ? "Before" : "After"}</span> {name}
        {waits && !hard.isOn && <strong>: mark the same place here</strong>}
        {outlines && <strong>: outline a part here</strong>}
      </p>
    </div>
  );
}

const keysOfLandmarks =
  "Arrow keys move the crosshair by one pixel, with Shift by ten, with Alt by a quarter. Space marks a place or takes hold of a landmark, N goes to the next, Delete takes the chosen one off both films, Escape lets go.";
const keysOfOutlining =
  "Arrow keys move the crosshair by one pixel, with Shift by ten, with Alt by a quarter. Space sets a corner of the outline, Enter closes it, Backspace takes the last corner back, N goes to the next part, Delete takes the chosen part off, Escape leaves the outline and then the tool.";

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
