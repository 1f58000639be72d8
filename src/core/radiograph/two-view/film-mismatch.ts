import { cameraOf } from "./camera.ts";
import type { SolvedFilms } from "./solve-films.ts";

/** Ends that lie apart in height by more than this share of the canal are worth a word. */
const leastShare = 0.05;
/** And by more than so many standard deviations. */
const leastDeviations = 4;
/** A canal that leans to buccal or lingual by more than this, as a whole, is none that roots usually have. */
const steepestDeg = 45;

/**
 * Cautions where films hardly show the same canal: ends that lie at other heights than one place can, and a course that runs
 * more across the jaw than along the root.
 * @source own rule, docs/methods/two-view.md C17
 */
export function mismatchCautions(solved: SolvedFilms): string[] {
  return [...endsApart(solved), ...steepCourse(solved)];
}

function endsApart({ films, places, sigmaMm }: SolvedFilms): string[] {
  const { views, receptor, source, centralRay, scaleSigma } = films;
  const end = places.at(-1)?.place;
  if (end === undefined) return [];
  const tube = source === undefined ? {} : { source: { ...source, centralRayMm: centralRay.mm } };
  const left = views.map(({ angle, tilt, points }) => {
    const image = cameraOf({ receptor, angle, tilt, ...tube })(end);
    return (points.at(-1)?.v ?? 0) - image.v;
  });
  const apartMm = Math.max(...left) - Math.min(...left);
  const riseMm = Math.abs(end.z - (places[0]?.place.z ?? 0));
  const errorMm = Math.SQRT2 * Math.hypot(Math.SQRT2 * sigmaMm, scaleSigma * riseMm);
  if (apartMm < leastShare * riseMm || apartMm < leastDeviations * errorMm) return [];
  return [
    `The traces end ${apartMm.toFixed(1)} mm apart in height, ${((100 * apartMm) / riseMm).toFixed(0)} % of the canal and more than their error: check that all films show this tooth, that traces begin and end at the same places, and the scales.`,
  ];
}

function steepCourse({ places }: SolvedFilms): string[] {
  const [first, last] = [places[0]?.place, places.at(-1)?.place];
  if (first === undefined || last === undefined) return [];
  const leanDeg = (Math.atan2(Math.abs(last.y - first.y), Math.abs(last.z - first.z)) * 180) / Math.PI;
  if (leanDeg < steepestDeg) return [];
  return [
    `From orifice to foramen the course would lean ${leanDeg.toFixed(0)} degrees to ${last.y > first.y ? "buccal" : "lingual"}, more than roots do (common practice): check that all films show this tooth, their angles, and to which side u runs.`,
  ];
}
