import { type ComponentProps, useLayoutEffect, useRef } from "react";
import { filmName } from "../../../lightbox/kernels/film-name.ts";
import { toFilm, toScreen } from "../../../lightbox/kernels/film-placement.ts";
import { inFilm } from "../../../lightbox/kernels/film-point.ts";
import { entryOf, numberOf } from "../../../lightbox/kernels/ledger-reading.ts";
import type { LaidPanes } from "../../../lightbox/two-view/laid-panes.ts";
import { placeOnLine, shareNearest } from "../../../lightbox/two-view/level-ticks.ts";
import { courseShareOf, traceShareOf } from "../../../lightbox/two-view/place-across.ts";
import { FilmPane } from "../../../lightbox/view/film-pane.tsx";
import { type FilmView, useFilmView } from "../../../lightbox/view/use-film-view.ts";
import { useMovingFilm } from "../../../lightbox/view/use-moving-film.ts";
import type { PaneGroupUse } from "../../../lightbox/view/use-pane-group.ts";
import type { PlacementUse } from "../../../lightbox/view/use-placement.ts";
import { LandmarkDrawing, useLandmarkHand } from "./landmark-hand.tsx";
import { LevelTicks } from "./level-tick.tsx";
import { type FilmInWork, type TwoViewWork, useTwoView } from "./two-view-work.ts";

interface FilmWithLevelsOptions {
  readonly index: number;
  readonly group: PaneGroupUse;
  readonly laid: LaidPanes;
}

/** One film of the canal with its trace, the levels on it, and the landmarks that it shares. */
export function FilmWithLevels({ index, group, laid }: FilmWithLevelsOptions) {
  const work = useTwoView();
  const one = work.films[index];
  if (one === undefined) return null;
  return <FilmPaneOf {...{ one, index, group, laid, work }} />;
}

interface FilmPaneOfOptions extends FilmWithLevelsOptions {
  readonly one: FilmInWork;
  readonly work: TwoViewWork;
}

function FilmPaneOf({ one, index, group, laid, work }: FilmPaneOfOptions) {
  const { film, trace, marks, name, line } = one;
  const view = useFilmView(film, { group, paneId: film.id, mmPerPx: scaleOf(work, film.id) });
  const element = useRef<HTMLElement>(null);
  useLaid(view, { element, laid, columns: work.films.length });
  const hand = useLandmarkHand(view, one);
  const moving = useMovingFilm(view);
  const pointing = usePointingAt(view, { one, index, work });
  const place = placeHere(work, index);
  return (
    <section ref={element} className="film-pane" aria-label={`Film ${index + 1}: ${name}`}>
      <FilmPane
        view={view}
        marks={marks}
        place={place === undefined ? undefined : { markId: trace.id, share: place }}
        drawing={(_, unit) => <LandmarkDrawing hand={hand} film={film.id} unit={unit} />}
        above={(placing) => <TickLines placing={placing} index={index} line={line} work={work} />}
        stage={stageOf({ moving, hand, pointing }, `${filmName(film, work.presentedOn)}, ${name}`)}
      >
        <span className="unseen" id={`film-keys-${index}`}>
          Arrow keys move the films, plus and minus zoom, 0 shows them whole. Tab goes on to the levels.
        </span>
        {view.placing !== undefined && view.pixels.is === "open" && (
          <LevelTicks index={index} line={line} placing={view.placing} pane={view.pane} />
        )}
      </FilmPane>
      <p className="film-pane-name">
        {name}
        <span className="quiet"> {filmName(film, work.presentedOn)}</span>
      </p>
    </section>
  );
}

function scaleOf({ ledger }: TwoViewWork, film: string) {
  const entry = entryOf(ledger, "calibrate", film);
  const [column, row] = [numberOf(entry, "mmPerPx.column"), numberOf(entry, "mmPerPx.row")];
  return column === undefined || row === undefined ? undefined : { column: column.value, row: row.value };
}

interface LaidOptions {
  readonly element: React.RefObject<HTMLElement | null>;
  readonly laid: LaidPanes;
  readonly columns: number;
}

/** Tells what is drawn across the panes where this film lies. */
function useLaid({ placing, film, pixels }: FilmView, { element, laid, columns }: LaidOptions): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: one film more moves every pane
  useLayoutEffect(() => {
    const { current } = element;
    if (placing === undefined || current === null) return undefined;
    const corner = { x: current.offsetLeft, y: current.offsetTop };
    const isOpen = pixels.is === "open";
    laid.put(film.id, { placement: placing.placement, pane: placing.pane, corner, isOpen });
    return undefined;
  }, [placing, pixels.is, laid, film.id, element, columns]);
  useLayoutEffect(() => () => laid.put(film.id, undefined), [laid, film.id]);
}

/** Where the place that is pointed at on the course lies on this film's trace. */
function placeHere({ place, course, ticks }: TwoViewWork, film: number): number | undefined {
  if (place === undefined || course === undefined || ticks.length === 0) return undefined;
  return traceShareOf(course, ticks, { film, share: place });
}

/** How far from a trace, in pixels of the screen, the pointer still names a place on it. */
const besideTrace = 24;

/** Names the place of the course that the pointer is beside. */
function usePointingAt(view: FilmView, at: { one: FilmInWork; index: number; work: TwoViewWork }) {
  return {
    move: (event: React.PointerEvent) => {
      const { placing, pane, film } = view;
      const { course, ticks, setPlace, place } = at.work;
      if (placing === undefined || course === undefined || event.buttons !== 0) return;
      const on = inFilm(toFilm(placing.placement, placing.pane, pane.screenOf(event)), film.body);
      const { share, distancePx } = shareNearest(at.one.line, on);
      if (distancePx * placing.placement.zoom <= besideTrace)
        setPlace(courseShareOf(course, ticks, { film: at.index, share }));
      else if (place !== undefined) setPlace(undefined);
    },
    leave: () => at.work.setPlace(undefined),
  };
}

interface StageOptions {
  readonly moving: ReturnType<typeof useMovingFilm>;
  readonly hand: ReturnType<typeof useLandmarkHand>;
  readonly pointing: ReturnType<typeof usePointingAt>;
}

function stageOf({ moving, hand, pointing }: StageOptions, name: string): ComponentProps<typeof FilmPane>["stage"] {
  const shared = {
    role: "application",
    "aria-label": name,
    tabIndex: 0,
    onPointerLeave: pointing.leave,
  } as const;
  if (hand.isMarking)
    return { ...shared, "data-tool": "spot", onPointerDown: hand.onPointerDown, onKeyDown: hand.onKeyDown };
  return {
    ...shared,
    ...moving,
    onPointerMove: (event) => {
      moving.onPointerMove?.(event);
      pointing.move(event);
    },
  };
}

interface TickLinesOptions {
  readonly placing: PlacementUse;
  readonly index: number;
  readonly line: FilmInWork["line"];
  readonly work: TwoViewWork;
}

/** The short lines of the levels across the trace, in pixels of the pane. */
function TickLines({ placing, index, line, work }: TickLinesOptions) {
  return work.ticks.map(({ number, shares, fixed }) => {
    const at = toScreen(placing.placement, placing.pane, placeOnLine(line, shares[index] ?? 0));
    const half = fixed ? 9 : 6;
    const d = `M${at.x - half} ${at.y}H${at.x + half}`;
    return (
      <g key={number} className="level-mark" data-fixed={fixed} data-look={work.level === number}>
        <path className="mark-rim" d={d} />
        <path className="mark-line" d={d} />
      </g>
    );
  });
}
