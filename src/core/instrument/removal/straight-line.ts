import { cross, dot, minus, mix, norm, plus, unit, type Vector, vector } from "../../geometry/vector.ts";
import type { CoursePlaces } from "./course-places.ts";

/** How far a straight line lies off the canal's axis at a distance from the orifice, in mm. */
export interface LineOffset {
  readonly atMm: number;
  /** Above 0 towards the inner wall of the bend. */
  readonly innerMm: number;
  /** Across that direction, 0 or more. */
  readonly acrossMm: number;
}

const steps = 400;

/**
 * How far the straight line from the orifice to the fragment's head lies off the canal, station by station.
 * Takes the course and the head's depth along it; then how far the orifice is moved away from the inner wall, all in mm.
 * @source plane geometry; docs/methods/removal.md C1 and C2
 */
export function lineOffsets(course: CoursePlaces, headDepthMm: number): (shiftMm: number) => LineOffset[] {
  const orifice = course.placeAt(0);
  const head = course.placeAt(headDepthMm);
  const along = Array.from({ length: steps + 1 }, (_, index) => (headDepthMm * index) / steps);
  const places = along.map((atMm) => ({ atMm, place: course.placeAt(atMm) }));
  const fixed = places.map(({ place }) => toLine(place, orifice, head));
  const widest = fixed.reduce((most, one) => (norm(one) > norm(most) ? one : most), vector(0, 0));
  const inner = norm(widest) > flatMm ? unit(widest) : acrossOf(minus(head, orifice));
  const across = unit(cross(minus(head, orifice), inner));
  return (shiftMm) =>
    places.map(({ atMm, place }) => {
      const off = toLine(place, plus(orifice, inner, -shiftMm), head);
      const acrossMm = Math.abs(dot(off, across));
      const inPlane = Math.sqrt(Math.max(0, dot(off, off) - acrossMm ** 2));
      return { atMm, innerMm: dot(off, inner) < 0 ? -inPlane : inPlane, acrossMm };
    });
}

/** A course that lies nearer to its chord than this is straight, mm. */
const flatMm = 1e-6;

/** From a place to the nearest one of a line. */
function toLine(place: Vector, from: Vector, to: Vector): Vector {
  const direction = unit(minus(to, from));
  const away = minus(place, from);
  return mix(dot(away, direction), direction, -1, away);
}

/** Some direction across another one, in the plane of a film where it lies there. */
function acrossOf(direction: Vector): Vector {
  const inPlane = vector(direction.y, -direction.x);
  return norm(inPlane) > 0 ? unit(inPlane) : unit(cross(direction, vector(1, 0)));
}
