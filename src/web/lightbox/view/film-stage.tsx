import { useRef } from "react";
import type { BendOnFilm } from "../../../ledger/strain-on-film.ts";
import { filmGrid } from "../kernels/film-grid.ts";
import { filmName } from "../kernels/film-name.ts";
import type { MeasuredMark } from "../kernels/measured-marks.ts";
import { sidesOnFilm } from "../kernels/sides-on-film.ts";
import { DrawingLayer } from "./drawing-layer.tsx";
import { FilmPane } from "./film-pane.tsx";
import { GridLayer } from "./grid-layer.tsx";
import { keyOnFilm, spaceOnFilm } from "./keys-on-film.ts";
import type { LightBox } from "./light-box.ts";
import { useListedKeys } from "./listed-keys.ts";
import { usePointing, useWheelZoom } from "./pointing.ts";
import { SidesLayer } from "./sides-layer.tsx";
import { StrainLayer, StrainName } from "./strain-layer.tsx";

interface FilmStageOptions {
  readonly box: LightBox;
  /** What the ledger measured of the marks. */
  readonly measured: readonly MeasuredMark[];
  /** The instrument whose strain is laid over the film. */
  readonly strain?: BendOnFilm | undefined;
}

/** The film itself: its pixels, what is marked on it, and everything that mouse and keyboard do to it. */
export function FilmStage({ box, measured, strain }: FilmStageOptions) {
  const pointing = usePointing(box);
  const keys = useKeysOnFilm(box, pointing.space);
  useWheelZoom(box);
  const { tool, film, presentedOn, sight } = box;
  const sides = box.side && sidesOnFilm(box.side, film.body.uRunsTo, box.orientation);
  const grid = gridOver(box);
  return (
    <FilmPane
      view={box}
      beneath={() => grid && <GridLayer grid={grid} film={film.body} />}
      above={(placing) => (
        <>
          {sides && <SidesLayer sides={sides} film={film.body} placing={placing} />}
          {strain && <StrainName bend={strain} placing={placing} />}
        </>
      )}
      marks={sight.marks ? box.shown : []}
      chosen={box.isInHand ? box.chosen : undefined}
      measured={measured}
      place={box.place}
      drawing={(_, unit) => (
        <>
          {strain && <StrainLayer bend={strain} unit={unit} />}
          <DrawingLayer state={tool.state} asking={box.asking} crosshair={box.crosshair} unit={unit} />
        </>
      )}
      stage={{
        "data-tool": tool.state.tool,
        role: "application",
        "aria-label": [
          filmName(film, presentedOn),
          `${box.marks.length} marks`,
          ...(sides?.says ? [sides.says] : []),
        ].join(", "),
        "aria-describedby": box.isInHand ? "film-stage-keys" : undefined,
        tabIndex: 0,
        // A press gives the focus by itself; the browser would take it away again from a question that the press opened.
        onMouseDown: (event) => event.preventDefault(),
        onPointerDown: pointing.onPointerDown,
        onPointerMove: pointing.onPointerMove,
        onPointerUp: pointing.onPointerUp,
        onPointerCancel: pointing.onPointerUp,
        onPointerLeave: pointing.onPointerLeave,
        onKeyDown: keys.down,
        onKeyUp: keys.up,
      }}
    >
      {box.isInHand && <ListedKeys />}
      {grid && <p className="grid-step">{`grid ${grid.step}`}</p>}
    </FilmPane>
  );
}

/** The grid that is asked for, in the film's scale where it has one. */
function gridOver({ sight, placing, film, mmPerPx }: LightBox) {
  return sight.grid && placing ? filmGrid(film.body, placing.placement.zoom, mmPerPx) : undefined;
}

/** What the film's keys do, for the sheet of keys and for those who can't see it. */
function ListedKeys() {
  useListedKeys();
  return (
    <span id="film-stage-keys" className="unseen">
      Arrow keys move the crosshair of a marking tool by one pixel, with Shift by ten, with Alt by a quarter. Space
      marks a place, Enter ends, Backspace takes back, Escape leaves. Question mark lists all keys.
    </span>
  );
}

/** Space held moves the film; Space tapped marks at the crosshair, so it acts when it is let go. */
function useKeysOnFilm(box: LightBox, space: ReturnType<typeof usePointing>["space"]) {
  const latest = useRef(box);
  latest.current = box;
  return {
    down: (event: React.KeyboardEvent<HTMLDivElement>) => {
      if (event.target !== event.currentTarget) return;
      if (event.key === " ") {
        event.preventDefault();
        if (!event.repeat) space.current = { held: true, used: false };
      } else if (keyOnFilm(latest.current, event.nativeEvent)) event.preventDefault();
    },
    up: (event: React.KeyboardEvent<HTMLDivElement>) => {
      if (event.key !== " " || !space.current.held) return;
      const { used } = space.current;
      space.current = { held: false, used: false };
      if (!used) spaceOnFilm(latest.current, event.shiftKey);
    },
  };
}
