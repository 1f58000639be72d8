import type { Spot } from "./svg-tree.ts";
import type { Box } from "./text-label.ts";

/** A place of a canal's course in mm, on one film or in space. */
export type CoursePoint = readonly [number, number] | readonly [number, number, number];

/** A course as it stands in a drawing: the orifice above, the way to the foramen down the page, at one scale. */
export interface DrawnCourse {
  /** Along the course as it was given, in mm. */
  readonly lengthMm: number;
  /** One mm in the units of the drawing. */
  readonly perMm: number;
  /** Where a depth from the orifice lies. */
  readonly at: (depthMm: number) => Spot;
  /** A place beside the course at a depth, mm to its right as one goes down. */
  readonly beside: (depthMm: number, mm: number) => Spot;
  /** Spots of a part of the course, from one depth to the other. */
  readonly part: (fromMm: number, toMm: number) => readonly Spot[];
  /** Where any place of the same axes lies. */
  readonly spotOf: (place: CoursePoint) => Spot;
}

type Place = readonly [number, number, number];
const inSpace = ([x, y, z = 0]: CoursePoint): Place => [x, y, z];
const less = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (a: Place, by: number): Place => [a[0] * by, a[1] * by, a[2] * by];
const sizeOf = (a: Place): number => Math.hypot(a[0], a[1], a[2]);
const unit = (a: Place, otherwise: Place): Place => {
  const length = sizeOf(a);
  return length < 1e-9 ? otherwise : times(a, 1 / length);
};

/** Spots between two neighbours of the course. */
const fine = 6;

/**
 * A course turned so that its orifice stands above its foramen and put into a box at one scale. A course of one film keeps
 * its sides; one in space is seen square to the plane that it lies in best, its bend to the right.
 */
export function drawnCourse(course: readonly CoursePoint[], box: Box, roomMm = 0.8): DrawnCourse {
  const points = course.map(inSpace);
  const start = points[0] ?? [0, 0, 0];
  const axes = axesOf(points, start, course[0]?.length === 3);
  const flat = (place: Place): Spot => ({
    x: dot(less(place, start), axes.across),
    y: dot(less(place, start), axes.along),
  });
  const smooth = smoothed(points);
  const lengths = lengthsOf(smooth);
  const spots = smooth.map(flat);
  const [left, right] = [Math.min(...spots.map(({ x }) => x)) - roomMm, Math.max(...spots.map(({ x }) => x)) + roomMm];
  const [top, foot] = [Math.min(...spots.map(({ y }) => y)), Math.max(...spots.map(({ y }) => y))];
  const perMm = Math.min((box.right - box.left) / (right - left), (box.bottom - box.top) / Math.max(1, foot - top));
  const middle = (box.left + box.right) / 2 - (perMm * (left + right)) / 2;
  const onPage = ({ x, y }: Spot): Spot => ({ x: middle + x * perMm, y: box.top + (y - top) * perMm });
  const drawn = spots.map(onPage);
  return {
    lengthMm: lengths.at(-1) ?? 0,
    perMm,
    spotOf: (place) => onPage(flat(inSpace(place))),
    ...along(drawn, lengths, perMm),
  };
}

function along(spots: readonly Spot[], lengths: readonly number[], perMm: number) {
  const at = (depthMm: number): Spot => spotAt(spots, lengths, depthMm).spot;
  const beside = (depthMm: number, mm: number): Spot => {
    const { spot, ahead } = spotAt(spots, lengths, depthMm);
    return { x: spot.x + ahead.y * mm * perMm, y: spot.y - ahead.x * mm * perMm };
  };
  const part = (fromMm: number, toMm: number): readonly Spot[] => [
    at(fromMm),
    ...spots.filter((_, index) => (lengths[index] ?? 0) > fromMm && (lengths[index] ?? 0) < toMm),
    at(toMm),
  ];
  return { at, beside, part };
}

function spotAt(spots: readonly Spot[], lengths: readonly number[], depthMm: number) {
  const found = lengths.findIndex((length) => length >= depthMm);
  const next = Math.max(1, found < 0 ? lengths.length - 1 : found);
  const [from, to] = [spots[next - 1] ?? { x: 0, y: 0 }, spots[next] ?? { x: 0, y: 1 }];
  const [before, after] = [lengths[next - 1] ?? 0, lengths[next] ?? 0];
  const share = after > before ? Math.min(1, Math.max(0, (depthMm - before) / (after - before))) : 0;
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const ahead = long < 1e-9 ? { x: 0, y: 1 } : { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
  return { spot: { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }, ahead };
}

/** Along the chord, and square to it: in space the way in which the course leaves its chord most, else to the chord's side. */
function axesOf(points: readonly Place[], start: Place, isInSpace: boolean) {
  const end = points.at(-1) ?? start;
  const chord = unit(less(end, start), [0, 1, 0]);
  const aside: Place = [chord[1], -chord[0], 0];
  if (!isInSpace) return { along: chord, across: unit(aside, [1, 0, 0]) };
  const off = points.map((point) => {
    const from = less(point, start);
    return less(from, times(chord, dot(from, chord)));
  });
  const other: Place = Math.abs(chord[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const square = unit(less(other, times(chord, dot(other, chord))), [1, 0, 0]);
  const across = widestOf(off, square);
  const sum = off.reduce((total, one) => total + dot(one, across), 0);
  return { along: chord, across: sum < 0 ? times(across, -1) : across };
}

/** The direction in which places lie apart most, by repeated multiplication from the farthest of them. */
function widestOf(off: readonly Place[], otherwise: Place): Place {
  const farthest = off.reduce<Place>((most, one) => (sizeOf(one) > sizeOf(most) ? one : most), [0, 0, 0]);
  let direction = unit(farthest, otherwise);
  for (let turn = 0; turn < 40; turn++) {
    const next = off.reduce<Place>(
      (sum, one) => {
        const by = dot(one, direction);
        return [sum[0] + one[0] * by, sum[1] + one[1] * by, sum[2] + one[2] * by];
      },
      [0, 0, 0],
    );
    direction = unit(next, direction);
  }
  return direction;
}

/** A smooth way through all points: a cubic between each two, its slope that of the chord over the neighbours. */
function smoothed(points: readonly Place[]): readonly Place[] {
  const at = (index: number): Place => points[Math.min(points.length - 1, Math.max(0, index))] ?? [0, 0, 0];
  if (points.length < 3) return points;
  const pieces = points.slice(1).flatMap((_, index) =>
    Array.from({ length: fine }, (_, step) => {
      const t = step / fine;
      return blend([at(index - 1), at(index), at(index + 1), at(index + 2)], t);
    }),
  );
  return [...pieces, at(points.length - 1)];
}

function blend([a, b, c, d]: readonly [Place, Place, Place, Place], t: number): Place {
  const one = (axis: 0 | 1 | 2): number => {
    const [p, q, r, s] = [a[axis], b[axis], c[axis], d[axis]];
    return q + (t * (r - p + t * (2 * p - 5 * q + 4 * r - s + t * (3 * (q - r) + s - p)))) / 2;
  };
  return [one(0), one(1), one(2)];
}

function lengthsOf(points: readonly Place[]): readonly number[] {
  let sum = 0;
  return points.map((point, at) => {
    sum += at === 0 ? 0 : sizeOf(less(point, points[at - 1] ?? point));
    return sum;
  });
}
