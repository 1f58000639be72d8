import type { SeededRandom } from "../../../src/core/statistics/seeded-random.ts";
import { evenly, type OnFilm } from "./film-line.ts";

/** What a careful hand misses by, px per axis: a little less than the 1 px that the settings begin with. */
const clickSigmaPx = 0.8;
/** A followed line is sampled about so often, px. */
const samplePx = 4;

/**
 * A true course as a person would have followed it: points about every 4 px, each off by a click's error, the first and
 * the last among a few anchors. Takes at least two points.
 */
export function clickedCourse(
  truth: readonly OnFilm[],
  random: SeededRandom,
): { points: [number, number][]; anchors: [number, number][] } {
  const points = evenly(truth, samplePx).map((point) => clicked(point, random));
  const last = points.length - 1;
  const every = Math.max(1, Math.round(last / 4));
  const anchors = points.filter((_, at) => at === last || (at % every === 0 && last - at >= every / 2));
  return { points, anchors };
}

/** A place as it is clicked, to a tenth of a pixel. */
export function clicked([u, v]: OnFilm, random: SeededRandom): [number, number] {
  return [tenth(u + clickSigmaPx * random.normal()), tenth(v + clickSigmaPx * random.normal())];
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
