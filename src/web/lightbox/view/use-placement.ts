import { useEffect, useMemo } from "react";
import {
  type FilmPlacement,
  type Matrix,
  type PaneSize,
  panned,
  placementMatrix,
  type ScreenPoint,
  zoomedAt,
} from "../kernels/film-placement.ts";
import type { FramedFilm } from "../kernels/pane-group.ts";
import type { PaneGroupUse } from "./use-pane-group.ts";

/** How the film lies in the pane, and what moves it. Absent until pane and film have their sizes. */
export interface PlacementUse {
  readonly placement: FilmPlacement;
  readonly pane: PaneSize;
  readonly matrix: Matrix;
  readonly push: (by: ScreenPoint) => void;
  readonly zoom: (factor: number, at?: ScreenPoint) => void;
  readonly fit: () => void;
}

/** Lays the film of a pane out: whole at first and whenever the pane changes, until the person has moved it. */
export function usePlacement(
  group: PaneGroupUse,
  id: string,
  framed: FramedFilm | undefined,
): PlacementUse | undefined {
  const { join } = group;
  useEffect(() => (framed === undefined ? undefined : join(id, framed)), [join, id, framed]);
  return useMemo(() => {
    const placement = framed && group.placementOf(id, framed);
    if (placement === undefined || framed === undefined) return undefined;
    const { pane, film } = framed;
    return {
      ...{ placement, pane, matrix: placementMatrix(placement, pane) },
      push: (by) => group.move(id, (now) => panned(now, film, by)),
      zoom: (factor, at = { x: pane.width / 2, y: pane.height / 2 }) =>
        group.move(id, (now) => zoomedAt(now, pane, { at, factor })),
      fit: () => group.fit(id),
    };
  }, [group, id, framed]);
}
