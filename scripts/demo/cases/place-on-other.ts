import { type FilmGeometry, projectionOf } from "../../../src/phantom/exposure/projection.ts";
import { type ToothPoint, toothPoint } from "../../../src/phantom/tooth-point.ts";
import type { OnFilm } from "./film-line.ts";

/** A place seen on a film, and how far it lies to the buccal of the tooth's axis. */
export interface SeenPlace {
  readonly at: OnFilm;
  readonly buccalMm: number;
}

/** Where a place of one film falls on another: back along its ray to its depth, and from there to the other film. */
export function placeOnOther({ at, buccalMm }: SeenPlace, first: FilmGeometry, second: FilmGeometry): OnFilm {
  const { column, row } = projectionOf(second).toFilm(placeAtDepth(at, buccalMm, first));
  return [column, row];
}

function placeAtDepth([column, row]: OnFilm, buccalMm: number, geometry: FilmGeometry): ToothPoint {
  const { source, onDetector } = projectionOf(geometry);
  const foot = onDetector(column, row);
  const share = (buccalMm - source.y) / (foot.y - source.y);
  const between = (axis: "x" | "y" | "z"): number => source[axis] + share * (foot[axis] - source[axis]);
  return toothPoint(between("x"), between("y"), between("z"));
}
