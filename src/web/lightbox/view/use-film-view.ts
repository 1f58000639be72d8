import { useMemo } from "react";
import type { FilmLook } from "../../../imaging/looked-at.ts";
import { lookOf } from "../kernels/film-look.ts";
import type { Film } from "../kernels/film-name.ts";
import type { FilmOrientation } from "../kernels/film-placement.ts";
import type { GreyWindow } from "../kernels/grey-window.ts";
import type { FramedFilm, MmPerPx } from "../kernels/pane-group.ts";
import { seenToRight } from "../kernels/sides-on-film.ts";
import { type FilmPixelsState, useFilmPixels } from "./use-film-pixels.ts";
import { type Pane, usePane } from "./use-pane.ts";
import { type PaneGroupUse, usePaneGroup } from "./use-pane-group.ts";
import { type PlacementUse, usePlacement } from "./use-placement.ts";

/** A film in a pane: its pixels, how it lies there and how it is shown. */
export interface FilmView {
  readonly film: Film;
  readonly pixels: FilmPixelsState;
  readonly pane: Pane;
  /** Absent until the pane is laid out. */
  readonly placing: PlacementUse | undefined;
  /** How the film is held, as recorded with it. */
  readonly orientation: FilmOrientation;
  /** The window recorded with the film, or the one its file opens with; a room may show it under another. */
  readonly window: GreyWindow;
  /** What is done to the film for the eye, as recorded with it; never to its pixels. */
  readonly look: FilmLook;
  /** A hand is changing window or look. */
  readonly isMoving?: boolean;
}

/** What a pane needs beside its film when it is one of several. */
export interface FilmViewOptions {
  /** The panes it belongs to; a pane by itself needs none. */
  readonly group?: PaneGroupUse | undefined;
  /** Its id among them; another film in the same pane is another id. */
  readonly paneId?: string | undefined;
  /** The film's scale as the ledger has it; linked panes share millimetres where all films have one. */
  readonly mmPerPx?: MmPerPx | undefined;
}

/** Shows a film in a pane. */
export function useFilmView(film: Film, { group, paneId = film.id, mmPerPx }: FilmViewOptions = {}): FilmView {
  const alone = usePaneGroup();
  const pixels = useFilmPixels(film.body.hash);
  const pane = usePane();
  const orientation = useOrientation(film);
  const framed = useFramed(film, { pane, orientation, mmPerPx });
  const placing = usePlacement(group ?? alone, paneId, framed);
  return { film, pixels, pane, placing, orientation, window: useRecordedWindow(film, pixels), look: useLook(film) };
}

function useFramed(
  { body: { columns, rows, uRunsTo } }: Film,
  { pane, orientation, mmPerPx }: Pick<FilmView, "pane" | "orientation"> & Pick<FilmViewOptions, "mmPerPx">,
): FramedFilm | undefined {
  const { size } = pane;
  const [across, down] = [mmPerPx?.column, mmPerPx?.row];
  return useMemo(() => {
    if (size === undefined) return undefined;
    const scale = across === undefined || down === undefined ? undefined : { column: across, row: down };
    const toRight = seenToRight(uRunsTo, orientation);
    return { film: { columns, rows }, pane: size, orientation, mmPerPx: scale, toRight };
  }, [size, columns, rows, uRunsTo, orientation, across, down]);
}

function useOrientation(film: Film): FilmOrientation {
  const { quarterTurns = 0, mirrored = false } = film.body.view ?? {};
  return useMemo(() => ({ quarterTurns, mirrored }), [quarterTurns, mirrored]);
}

function useLook({ body: { view } }: Film): FilmLook {
  return useMemo(() => lookOf(view), [view]);
}

function useRecordedWindow({ body }: Film, pixels: FilmPixelsState): GreyWindow {
  const { view } = body;
  return useMemo(() => {
    if (view !== undefined) return { centre: view.windowCentre, width: view.windowWidth, invert: view.invert };
    return pixels.is === "open" ? pixels.film.window : { centre: 0, width: 1, invert: false };
  }, [view, pixels]);
}
