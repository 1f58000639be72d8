import { useEffect, useMemo, useState } from "react";
import type { ImagePoint } from "../../../../core/units.ts";
import type { ExerciseStepView } from "../../../../server/api.ts";
import type { ScreenPoint } from "../../../lightbox/kernels/film-placement.ts";
import type { GreyWindow } from "../../../lightbox/kernels/grey-window.ts";
import type { FilmPixelsState } from "../../../lightbox/view/use-film-pixels.ts";
import { usePixelsAt } from "../../../lightbox/view/use-film-pixels.ts";
import { type Pane, usePane } from "../../../lightbox/view/use-pane.ts";
import { usePaneGroup } from "../../../lightbox/view/use-pane-group.ts";
import { type PlacementUse, usePlacement } from "../../../lightbox/view/use-placement.ts";

/** A film of the exercise in the hand: its pixels, how it lies, how it is shown, and the crosshair over it. */
export interface MarkingFilm {
  readonly pixels: FilmPixelsState;
  readonly pane: Pane;
  readonly placing: PlacementUse | undefined;
  readonly window: GreyWindow;
  readonly setWindow: (window: GreyWindow | undefined) => void;
  readonly crosshair: ImagePoint | undefined;
  readonly setCrosshair: (at: ImagePoint | undefined) => void;
  /** Where the pointer is over the film, in pixels of the screen. */
  readonly pointer: ScreenPoint | undefined;
  readonly point: (at: ScreenPoint | undefined) => void;
}

/** Where the film of an exercise is. */
const filmAddress = (film: string): string => `/api/calibration/films/${film}`;

/** Holds one showing of a film; a new showing begins whole, in its own window, without a crosshair. */
export function useMarkingFilm({ film, columns, rows, mirrored }: ExerciseStepView, next?: string): MarkingFilm {
  const pixels = usePixelsAt(filmAddress(film));
  const pane = usePane();
  const group = usePaneGroup();
  const { size } = pane;
  const framed = useMemo(
    () => size && { film: { columns, rows }, pane: size, orientation: { quarterTurns: 0, mirrored } },
    [size, columns, rows, mirrored],
  );
  const placing = usePlacement(group, film, framed);
  const [chosen, setWindow] = useState<GreyWindow>();
  const [crosshair, setCrosshair] = useState<ImagePoint>();
  const [pointer, point] = useState<ScreenPoint>();
  const opened = pixels.is === "open" ? pixels.film.window : undefined;
  const window = chosen ?? opened ?? { centre: 0, width: 1, invert: false };
  useEffect(() => {
    // The next film is fetched while this one is marked, so that nobody waits for it.
    if (next !== undefined) void fetch(filmAddress(next)).catch(() => undefined);
  }, [next]);
  return { pixels, pane, placing, window, setWindow, crosshair, setCrosshair, pointer, point };
}
