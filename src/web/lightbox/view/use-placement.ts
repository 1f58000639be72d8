import { useEffect, useMemo, useRef, useState } from "react";
import {
  type FilmOrientation,
  type FilmPlacement,
  fitted,
  heldAs,
  type Matrix,
  type PaneSize,
  panned,
  placementMatrix,
  type ScreenPoint,
  zoomedAt,
} from "../kernels/film-placement.ts";
import type { FilmSize } from "../kernels/film-point.ts";

/** How the film lies in the pane, and what moves it. Absent until pane and film have their sizes. */
export interface PlacementUse {
  readonly placement: FilmPlacement;
  readonly pane: PaneSize;
  readonly matrix: Matrix;
  readonly push: (by: ScreenPoint) => void;
  readonly zoom: (factor: number, at?: ScreenPoint) => void;
  readonly fit: () => void;
}

/** Lays the film out: whole at first and whenever the pane changes, until the person has moved it. */
export function usePlacement(
  film: FilmSize,
  pane: PaneSize | undefined,
  orientation: FilmOrientation,
): PlacementUse | undefined {
  const { columns, rows } = film;
  const { quarterTurns, mirrored } = orientation;
  const [moved, setMoved] = useState<FilmPlacement>();
  const size = useMemo(() => ({ columns, rows }), [columns, rows]);
  const held = useMemo(() => ({ quarterTurns, mirrored }), [quarterTurns, mirrored]);
  // A turn needs another size to fit, so it starts anew.
  const turned = useRef(quarterTurns);
  useEffect(() => {
    if (turned.current === quarterTurns) return;
    turned.current = quarterTurns;
    setMoved(undefined);
  }, [quarterTurns]);
  const placement = useMemo(
    () => (moved !== undefined ? heldAs(moved, held) : pane && fitted(size, pane, held)),
    [moved, held, pane, size],
  );
  // Several steps can come before the next drawing; each begins where the one before ended.
  const latest = useRef(placement);
  latest.current = placement;
  return useMemo(() => {
    if (placement === undefined || pane === undefined) return undefined;
    const move = (next: (now: FilmPlacement) => FilmPlacement) => {
      latest.current = next(latest.current ?? placement);
      setMoved(latest.current);
    };
    return {
      ...{ placement, pane, matrix: placementMatrix(placement, pane) },
      push: (by) => move((now) => panned(now, size, by)),
      zoom: (factor, at = { x: pane.width / 2, y: pane.height / 2 }) =>
        move((now) => zoomedAt(now, pane, { at, factor })),
      fit: () => setMoved(undefined),
    };
  }, [placement, pane, size]);
}
