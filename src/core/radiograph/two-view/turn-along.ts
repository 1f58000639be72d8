import { cross, dot, plus, type Vector, vector } from "../../geometry/vector.ts";
import { degreesOf, rad } from "../../units.ts";
import { type Course, stateAt } from "../curvature/course.ts";
import type { Camera } from "./camera.ts";
import { drawnInterval } from "./drawn-intervals.ts";
import type { SolvedFilms } from "./solve-films.ts";
import type { TwoViewOutput } from "./two-view-output.ts";

const steps = 60;

/**
 * All turning from the orifice to places along the canal, whichever way it turns: in space, with what the films allow, and
 * as the image of the course shows it on each film.
 * @source plane geometry, docs/methods/two-view.md C9
 */
export function turnAlong(solved: SolvedFilms): Pick<TwoViewOutput, "seen" | "turn"> {
  const { course, draws } = solved;
  const lengthMm = course.foramen - course.orifice;
  const distances = Array.from({ length: steps + 1 }, (_, step) => (step / steps) * lengthMm);
  const drawn = draws.map(({ course: one, orifice, foramen, counts }) => ({
    counts,
    turns: distances.map((sMm) => turnBetween(one, orifice, Math.min(foramen, orifice + sMm))),
  }));
  const turn = distances.map((sMm, at) => {
    const turnDeg = turnBetween(course.course, course.orifice, course.orifice + sMm);
    const counted = drawn.map(({ turns, counts }) => ({ value: turns[at] ?? 0, counts }));
    const { low: lowDeg, high: highDeg } = drawnInterval(counted, turnDeg);
    return { sMm, turnDeg, lowDeg, highDeg };
  });
  const seen = course.cameras.map((camera) => {
    const turns = turnsOnFilm(
      course.course,
      camera,
      distances.map((sMm) => course.orifice + sMm),
    );
    return { profile: distances.map((sMm, at) => ({ sMm, turnDeg: turns[at] ?? 0 })) };
  });
  return { seen, turn };
}

/** All turning of a course between two places, in degrees: every piece turns one way. */
function turnBetween({ pieces }: Course, from: number, to: number): number {
  const turned = pieces.reduce((sum, piece, index) => {
    const end = pieces[index + 1]?.from ?? Number.POSITIVE_INFINITY;
    const start = index === 0 ? Number.NEGATIVE_INFINITY : piece.from;
    const [a, b] = [Math.max(from, start) - piece.from, Math.min(to, end) - piece.from];
    return b <= a ? sum : sum + Math.abs((b - a) * (piece.curvature + (piece.rate * (a + b)) / 2));
  }, 0);
  return degreesOf(rad(turned));
}

const nudge = 1e-4;

function turnsOnFilm(course: Course, camera: Camera, places: readonly number[]): number[] {
  const headings = places.map((s): Vector => {
    const { place, tangent } = stateAt(course, s);
    const here = camera(place);
    const there = camera(plus(place, tangent, nudge));
    return vector(there.u - here.u, there.v - here.v);
  });
  let gone = 0;
  return headings.map((heading, at) => {
    const before = headings[at - 1] ?? heading;
    gone += Math.abs(Math.atan2(cross(before, heading).z, dot(before, heading)));
    return degreesOf(rad(gone));
  });
}
