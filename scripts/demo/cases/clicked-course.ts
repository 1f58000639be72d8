import type { SeededRandom } from "../../../src/core/statistics/seeded-random.ts";
import { evenly, type OnFilm } from "./film-line.ts";

/** What a careful hand misses by, px per axis: a little less than the 1 px that the settings begin with. */
const clickSigmaPx = 0.8;
/** A followed line is sampled about so often, px. */
const samplePx = 3;
/** A hand puts an anchor about so often, px, and at least so many. */
const anchorPx = 75;
const fewestAnchors = 4;

/**
 * A true course as a person would have drawn it: a few anchors, each off by a click's error, and between them the line
 * itself, shifted as smoothly as the anchors are. Takes at least two points. Gives points about every 3 px.
 */
export function clickedCourse(
  truth: readonly OnFilm[],
  random: SeededRandom,
): { points: [number, number][]; anchors: [number, number][] } {
  const line = evenly(truth, samplePx);
  const last = line.length - 1;
  const pieces = Math.min(last, Math.max(fewestAnchors - 1, Math.round((last * samplePx) / anchorPx)));
  const places = Array.from({ length: pieces + 1 }, (_, piece) => Math.round((last * piece) / pieces));
  const misses = places.map((): OnFilm => [clickSigmaPx * random.normal(), clickSigmaPx * random.normal()]);
  const points = line.map(([u, v], at): [number, number] => {
    const [du, dv] = missAt(misses, (at * pieces) / last);
    return [hundredth(u + du), hundredth(v + dv)];
  });
  return { points, anchors: places.flatMap((place) => points.slice(place, place + 1)) };
}

/** The miss between anchors: a cubic through theirs, as a faired line has it. */
function missAt(misses: readonly OnFilm[], place: number): OnFilm {
  const piece = Math.min(misses.length - 2, Math.max(0, Math.floor(place)));
  const share = place - piece;
  const miss = (at: number): OnFilm => misses[Math.min(misses.length - 1, Math.max(0, at))] ?? [0, 0];
  const between = (axis: 0 | 1): number => {
    const [before, from, to, after] = [miss(piece - 1), miss(piece), miss(piece + 1), miss(piece + 2)].map(
      (one) => one[axis],
    );
    if (before === undefined || from === undefined || to === undefined || after === undefined) return 0;
    const [out, into] = [(to - before) / 2, (after - from) / 2];
    const [square, cube] = [share ** 2, share ** 3];
    return (
      (2 * cube - 3 * square + 1) * from +
      (cube - 2 * square + share) * out +
      (3 * square - 2 * cube) * to +
      (cube - square) * into
    );
  };
  return [between(0), between(1)];
}

/** A place as it is clicked, to a tenth of a pixel. */
export function clicked([u, v]: OnFilm, random: SeededRandom): [number, number] {
  return [tenth(u + clickSigmaPx * random.normal()), tenth(v + clickSigmaPx * random.normal())];
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
const hundredth = (value: number): number => Math.round(value * 100) / 100;
