import type { SeededRandom } from "../../../src/core/statistics/seeded-random.ts";

type Point = readonly [number, number];

/** What a careful hand misses by, px per axis. */
export const clickSigmaPx = 0.8;
/** A followed line is sampled about so often, px. */
const samplePx = 4;

/**
 * A true course as a person would have followed it: points about every 4 px, each off by a click's error, the first and
 * the last among a few anchors. Takes at least two points.
 */
export function clickedCourse(
  truth: readonly Point[],
  random: SeededRandom,
): { points: [number, number][]; anchors: [number, number][] } {
  const points = evenly(truth, samplePx).map((point) => clicked(point, random));
  const last = points.length - 1;
  const every = Math.max(1, Math.round(last / 4));
  const anchors = points.filter((_, at) => at === last || (at % every === 0 && last - at >= every / 2));
  return { points, anchors };
}

/** A place as it is clicked, to a tenth of a pixel. */
export function clicked([u, v]: Point, random: SeededRandom): [number, number] {
  return [tenth(u + clickSigmaPx * random.normal()), tenth(v + clickSigmaPx * random.normal())];
}

const tenth = (value: number): number => Math.round(value * 10) / 10;

/** Points at even distances along a line, its two ends among them. */
function evenly(line: readonly Point[], stepPx: number): Point[] {
  const along = distances(line);
  const length = along.at(-1) ?? 0;
  const count = Math.max(1, Math.round(length / stepPx));
  return Array.from({ length: count + 1 }, (_, at) => placeAt(line, along, (length * at) / count));
}

function distances(line: readonly Point[]): number[] {
  let sum = 0;
  return line.map((point, at) => {
    const before = line[at - 1];
    if (before !== undefined) sum += Math.hypot(point[0] - before[0], point[1] - before[1]);
    return sum;
  });
}

function placeAt(line: readonly Point[], along: readonly number[], distance: number): Point {
  const after = Math.max(
    1,
    along.findIndex((at) => at >= distance - 1e-9),
  );
  const [from, to] = [line[after - 1], line[after]];
  const [start, end] = [along[after - 1] ?? 0, along[after] ?? 0];
  if (from === undefined || to === undefined) return from ?? to ?? [0, 0];
  const share = end === start ? 0 : Math.min(1, (distance - start) / (end - start));
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}
