import type { ToothPlace } from "./seen-from.ts";

/** A film beside a course: where its tube stood, and whether its receptor turned with the beam. */
export interface FilmInSpace {
  readonly name: string;
  readonly angleDeg: number;
  readonly receptor: "turnsWithBeam" | "fixed";
}

/** The stretch of a film that is drawn: how far behind the axis it stands, and its edges. */
export interface FilmFrame {
  readonly behindMm: number;
  readonly acrossMm: readonly [number, number];
  readonly downMm: readonly [number, number];
}

/**
 * The image of a place on a film that stands behind the tooth: where the ray through the place meets its plane.
 * A receptor that turns with the beam is square to it, one left in place to the straight-on beam.
 */
export function imageOf(film: FilmInSpace, behindMm: number, [x, y, z]: ToothPlace): ToothPlace {
  const a = (film.angleDeg * Math.PI) / 180;
  if (film.receptor === "fixed") return [x + (y + behindMm) * Math.tan(a), -behindMm, z];
  const u = x * Math.cos(a) + y * Math.sin(a);
  return onFilm(film, behindMm, [u, z]);
}

/** The four corners of the drawn stretch, in order. */
export function cornersOf(film: FilmInSpace, { behindMm, acrossMm, downMm }: FilmFrame): readonly ToothPlace[] {
  const [left, right] = acrossMm;
  const [top, bottom] = downMm;
  const corners: readonly (readonly [number, number])[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
  return corners.map((corner) => onFilm(film, behindMm, corner));
}

/** How far across the film a place's image lies from the one of the axis. */
export function acrossOn(film: FilmInSpace, behindMm: number, place: ToothPlace): number {
  const [x, y] = imageOf(film, behindMm, place);
  if (film.receptor === "fixed") return x;
  const a = (film.angleDeg * Math.PI) / 180;
  return x * Math.cos(a) + y * Math.sin(a);
}

function onFilm({ angleDeg, receptor }: FilmInSpace, behindMm: number, [u, v]: readonly [number, number]): ToothPlace {
  if (receptor === "fixed") return [u, -behindMm, v];
  const a = (angleDeg * Math.PI) / 180;
  return [u * Math.cos(a) + behindMm * Math.sin(a), u * Math.sin(a) - behindMm * Math.cos(a), v];
}
