import { type ImagePoint, px } from "../units.ts";

/** How far the points of a course lie apart along it, in pixels of the film. */
const courseStepPx = 3;
/** How many neighbours on each side a point is evened out with. */
const reach = 8;

/**
 * A course of evenly spaced points from a chain of neighbouring pixels.
 * Takes the chain from one place to another, and both places, which the course begins and ends at exactly.
 * Gives points about 3 px apart. A chain of pixels is a stair, up to 8 % too long, and wavers by a pixel where the line
 * is faint; a mean over seventeen neighbours, taken twice, takes both out and moves an arc of radius R by about 24 / R
 * pixels, half a pixel for the tightest canals.
 * @source plane geometry; docs/methods/trace C4
 */
export function courseOfPath(path: readonly ImagePoint[], from: ImagePoint, to: ImagePoint): ImagePoint[] {
  const chain = [from, ...path.slice(1, -1), to];
  return evenlySpaced(smoothed(smoothed(chain)));
}

/** Each point's mean with as many neighbours on both sides as there are, up to {@link reach}; the ends stay. */
function smoothed(points: readonly ImagePoint[]): ImagePoint[] {
  return points.map((_, index) => {
    const wide = Math.min(reach, index, points.length - 1 - index);
    return meanOf(points.slice(index - wide, index + wide + 1));
  });
}

function meanOf(points: readonly ImagePoint[]): ImagePoint {
  const sum = (axis: keyof ImagePoint): number => points.reduce((total, point) => total + point[axis], 0);
  return { column: px(sum("column") / points.length), row: px(sum("row") / points.length) };
}

/** Points along a line at equal distances as near to the wanted one as the whole length allows; its ends are kept. */
function evenlySpaced(line: readonly ImagePoint[]): ImagePoint[] {
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return [];
  const along = distancesAlong(line);
  const length = along.at(-1) ?? 0;
  const steps = Math.max(1, Math.round(length / courseStepPx));
  const inner = Array.from({ length: steps - 1 }, (_, index) => placeAt(line, along, (length * (index + 1)) / steps));
  return [first, ...inner, last];
}

function distancesAlong(line: readonly ImagePoint[]): number[] {
  let length = 0;
  return line.map((point, index) => {
    const before = line[index - 1] ?? point;
    length += Math.hypot(point.column - before.column, point.row - before.row);
    return length;
  });
}

function placeAt(line: readonly ImagePoint[], along: readonly number[], distance: number): ImagePoint {
  const after = along.findIndex((at) => at >= distance);
  const end = line[after] ?? { column: px(0), row: px(0) };
  const start = line[after - 1] ?? end;
  const [low, high] = [along[after - 1] ?? 0, along[after] ?? 0];
  const share = high > low ? (distance - low) / (high - low) : 0;
  return {
    column: px(start.column + (end.column - start.column) * share),
    row: px(start.row + (end.row - start.row) * share),
  };
}
