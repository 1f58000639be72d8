import "../../../lightbox/view/film.css";
import { useRef } from "react";
import type { ImagePoint } from "../../../../core/units.ts";
import type { ExerciseStepView } from "../../../../server/api.ts";
import { toFilm } from "../../../lightbox/kernels/film-placement.ts";
import { inFilm, pairOf, pointOf } from "../../../lightbox/kernels/film-point.ts";
import { draggedWindow, type GreyWindow } from "../../../lightbox/kernels/grey-window.ts";
import { Crosshair } from "../../../lightbox/view/crosshair.tsx";
import { FilmCanvas } from "../../../lightbox/view/film-canvas.tsx";
import { useWheelZoom } from "../../../lightbox/view/pointing.ts";
import type { ExerciseAct } from "../../../record/exercise-queue.ts";
import { type ExercisePlace, edgesOf } from "./exercise-place.ts";
import { keyWhileMarking } from "./keys-while-marking.ts";
import { MarkingLoupe } from "./marking-loupe.tsx";
import type { MarkingFilm } from "./use-marking-film.ts";

interface MarkingStageOptions {
  readonly place: ExercisePlace;
  readonly film: MarkingFilm;
  readonly tool: "mark" | "window";
  readonly loupe: number;
  readonly act: (act: ExerciseAct) => void;
}

type Drag = { readonly from: { x: number; y: number }; readonly start: GreyWindow | undefined };

/** The film of an exercise: a press marks, the wheel makes it larger, Space held or the middle button moves it. */
export function MarkingStage({ place, film, tool, loupe, act }: MarkingStageOptions) {
  const { step, placeIndex, marks } = place;
  const says = step.places[placeIndex]?.says ?? "";
  const space = useRef({ held: false, used: false });
  const hand = useHand({ step, film, tool, act, space });
  useWheelZoom(film);
  const zoom = film.placing?.placement.zoom ?? 1;
  const mark = (at: ImagePoint, by: "pointer" | "keyboard") => act(markOf(at, by, zoom));
  return (
    <div
      ref={film.pane.element}
      className="film-stage"
      data-tool={tool}
      role="application"
      aria-label={`${step.tooth}, ${says}`}
      aria-describedby="marking-keys"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the film takes keys of its own, which its description names
      tabIndex={0}
      onMouseDown={(event) => event.preventDefault()}
      {...hand}
      onKeyDown={(event) => {
        if (event.key === " ") {
          event.preventDefault();
          if (!event.repeat) space.current = { held: true, used: false };
        } else if (keyWhileMarking(film, step, event.nativeEvent, mark)) event.preventDefault();
      }}
      onKeyUp={(event) => {
        if (event.key !== " " || !space.current.held) return;
        const { used } = space.current;
        space.current = { held: false, used: false };
        if (!used) keyWhileMarking(film, step, { key: "Enter", shiftKey: false, altKey: false }, mark);
      }}
    >
      <span id="marking-keys" className="unseen">
        A press marks. Arrow keys bring a crosshair and move it by one pixel, with Shift by ten, with Alt by a quarter;
        Space or Enter marks there. Plus and minus change the size, 0 shows the whole film. Question mark lists all
        keys.
      </span>
      <Film {...{ step, marks, film }} />
      {loupe > 0 && <MarkingLoupe film={film} size={step} times={loupe} />}
    </div>
  );
}

const markOf = (at: ImagePoint, by: "pointer" | "keyboard", zoom: number): ExerciseAct => ({
  do: "mark",
  mark: { at: pairOf(at), by, zoom },
});

/** What pointer and pen do: mark, move the film, or drag its window. */
function useHand({
  step,
  film,
  tool,
  act,
  space,
}: Pick<MarkingStageOptions, "film" | "tool" | "act"> & {
  readonly step: ExerciseStepView;
  readonly space: React.RefObject<{ held: boolean; used: boolean }>;
}) {
  const drag = useRef<Drag | undefined>(undefined);
  const pressed = useRef({ at: 0, x: 0, y: 0 });
  const { placing, pane, pixels } = film;
  return {
    onPointerDown: (event: React.PointerEvent<HTMLDivElement>) => {
      if (placing === undefined || pixels.is !== "open" || (event.button !== 0 && event.button !== 1)) return;
      event.currentTarget.focus({ preventScroll: true });
      const from = pane.screenOf(event);
      const isPush = event.button === 1 || space.current.held;
      if (isPush || tool === "window") {
        event.currentTarget.setPointerCapture(event.pointerId);
        space.current.used = true;
        drag.current = { from, start: isPush ? undefined : film.window };
        return;
      }
      if (isSamePress(pressed.current, event)) return;
      pressed.current = { at: event.timeStamp, x: event.clientX, y: event.clientY };
      film.setCrosshair(undefined);
      act(markOf(inFilm(toFilm(placing.placement, placing.pane, from), step), "pointer", placing.placement.zoom));
    },
    onPointerMove: (event: React.PointerEvent<HTMLDivElement>) => {
      const to = pane.screenOf(event);
      film.point(to);
      if (drag.current === undefined || placing === undefined || pixels.is !== "open") return;
      const { from, start } = drag.current;
      const by = { x: to.x - from.x, y: to.y - from.y };
      if (start !== undefined) return film.setWindow(draggedWindow(start, by, pixels.film.bitsStored));
      placing.push(by);
      drag.current = { from: to, start };
    },
    onPointerUp: () => {
      drag.current = undefined;
    },
    onPointerCancel: () => {
      drag.current = undefined;
    },
    onPointerLeave: () => film.point(undefined),
  };
}

/** A second press at the same place at once is a double press: it marks one place, not the next one as well. */
const isSamePress = (before: { at: number; x: number; y: number }, event: React.PointerEvent): boolean =>
  event.timeStamp - before.at < 350 && Math.hypot(event.clientX - before.x, event.clientY - before.y) < 6;

function Film({ step, marks, film }: Pick<ExercisePlace, "step" | "marks"> & { readonly film: MarkingFilm }) {
  const { pixels, placing, window, crosshair } = film;
  if (pixels.is === "loading") return <p className="film-waiting">Opening the film</p>;
  if (pixels.is === "refused") return <p className="film-refused">{pixels.says}</p>;
  if (placing === undefined) return null;
  const { matrix, placement, pane } = placing;
  const unit = 1 / placement.zoom;
  const [left, right] = edgesOf(step);
  return (
    <>
      <FilmCanvas film={pixels.film} line={pixels.line} window={window} matrix={matrix} />
      <svg className="film-overlay" width={pane.width} height={pane.height} aria-hidden="true">
        <g transform={`matrix(${matrix.join(" ")})`} className="drawing">
          {marks.map(({ at }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark is known by its number
            <Ring key={index} at={pointOf(at)} unit={unit} />
          ))}
          {crosshair !== undefined && <Crosshair at={crosshair} unit={unit} />}
        </g>
        {step.mirrored && (
          <text className="marking-edge" textAnchor="middle" x={pane.width / 2} y={13}>
            mirrored
          </text>
        )}
        <text className="marking-edge" x={14} y={pane.height - 14}>{`◂ ${left}`}</text>
        <text className="marking-edge" textAnchor="end" x={pane.width - 14} y={pane.height - 14}>{`${right} ▸`}</text>
      </svg>
    </>
  );
}

/** What was marked on this showing: a ring with an open middle. */
const Ring = ({ at: { column, row }, unit }: { at: ImagePoint; unit: number }) => (
  <g data-part="marked">
    <circle className="marking-rim" cx={column} cy={row} r={9 * unit} />
    <circle className="mark-ring" cx={column} cy={row} r={9 * unit} />
  </g>
);
