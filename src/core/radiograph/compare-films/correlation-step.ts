import { cholesky, solveCholesky } from "../../statistics/solve-linear.ts";
import { edge, type Template } from "./film-template.ts";
import { after, type Homography, reversed, scaled } from "./homography.ts";
import { greyAt, type Picture } from "./picture.ts";

/** What one step gives. */
export interface CorrelationStep {
  readonly map: Homography;
  /** How far the step moved a corner of the film at most, px. */
  readonly movedPx: number;
  /** The correlation of both films before the step, -1 to 1. */
  readonly correlation: number;
}

/** What may change in a step: the whole projective map, or a shift alone. */
export type Motion = "projective" | "shift";

/** Where the two numbers of a shift stand among the eight of a projective map. */
const ofShift = [2, 5];
const ofMap = [0, 1, 2, 3, 4, 5, 6, 7];

/**
 * One step towards the map under which both films correlate best.
 * Takes the template, the second film and the map so far. Gives the next map, or undefined where nothing is left to
 * compare. The first film, moved a little, is set equal to gain times the second plus offset; all ten numbers are solved
 * together, so that gain and offset of a film change nothing. That the least of these squares is the largest correlation
 * is what the method rests on.
 * @source G. D. Evangelidis, E. Z. Psarakis, IEEE Trans Pattern Anal Mach Intell 2008;30:1858-1865 (memory), in its
 * inverse compositional form; docs/methods/compare-films C2
 */
export function correlationStep(
  template: Template,
  film: Picture,
  map: Homography,
  motion: Motion = "projective",
): CorrelationStep | undefined {
  const free = motion === "shift" ? ofShift : ofMap;
  const sums = sumsOf(template, film, map, free);
  const lower = cholesky(sums.normal, free.length + 2);
  if (lower === undefined || sums.count < fewest) return undefined;
  const solution = solveCholesky(lower, sums.right);
  const [a, b, c, d, e, f, g, h] = numbersOf(solution, free);
  const { column, row, half } = template.middle;
  const toMiddle: Homography = [1 / half, 0, -column / half, 0, 1 / half, -row / half, 0, 0, 1];
  const small: Homography = [1 + a, b, c, d, 1 + e, f, g, h, 1];
  const step = after(reversed(toMiddle), after(small, toMiddle));
  const largest = Math.max(
    ...[-1, 1].flatMap((x) =>
      [-1, 1].map((y) => {
        const depth = g * x + h * y + 1;
        return Math.hypot((x + a * x + b * y + c) / depth - x, (y + d * x + e * y + f) / depth - y);
      }),
    ),
  );
  return { map: scaled(after(map, reversed(step))), movedPx: half * largest, correlation: correlationOf(sums) };
}

/** Fewer pixels than this tell nothing. */
const fewest = 30;

/** The eight numbers of a small map from those that were free; the others are 0. */
function numbersOf(solution: Float64Array, free: readonly number[]): Eight {
  const number = (place: number): number => solution[free.indexOf(place)] ?? 0;
  return [number(0), number(1), number(2), number(3), number(4), number(5), number(6), number(7)];
}

type Eight = readonly [number, number, number, number, number, number, number, number];

interface Sums {
  readonly normal: Float64Array;
  readonly right: Float64Array;
  readonly count: number;
  readonly squares: number;
  readonly total: number;
}

function sumsOf(template: Template, film: Picture, map: Homography, free: readonly number[]): Sums {
  const [a, b, c, d, e, f, g, h, i] = map;
  const size = free.length + 2;
  const normal = new Float64Array(size * size);
  const right = new Float64Array(size);
  const terms = new Float64Array(size);
  let [count, squares, total] = [0, 0, 0];
  for (let index = 0; index < template.count; index++) {
    const column = template.column[index] ?? 0;
    const row = template.row[index] ?? 0;
    const depth = g * column + h * row + i;
    const [u, v] = [(a * column + b * row + c) / depth, (d * column + e * row + f) / depth];
    const isInside = u >= edge && v >= edge && u <= film.columns - 1 - edge && v <= film.rows - 1 - edge;
    const other = isInside ? greyAt(film, u, v) : undefined;
    if (other === undefined) continue;
    const grey = template.grey[index] ?? 0;
    fillTerms(terms, template, { index, free });
    terms[size - 2] = -other;
    terms[size - 1] = -1;
    for (let one = 0; one < size; one++) {
      const term = terms[one] ?? 0;
      right[one] = (right[one] ?? 0) - term * grey;
      for (let two = 0; two <= one; two++) {
        const place = one * size + two;
        normal[place] = (normal[place] ?? 0) + term * (terms[two] ?? 0);
      }
    }
    count += 1;
    squares += grey * grey;
    total += grey;
  }
  for (let one = 0; one < size; one++)
    for (let two = 0; two < one; two++) normal[two * size + one] = normal[one * size + two] ?? 0;
  return { normal, right, count, squares, total };
}

/** How the grey of the template at a pixel changes with each free number of the map. */
function fillTerms(terms: Float64Array, template: Template, at: { index: number; free: readonly number[] }): void {
  const { column, row, right, down, middle } = template;
  const u = (right[at.index] ?? 0) * middle.half;
  const v = (down[at.index] ?? 0) * middle.half;
  if (at.free === ofShift) {
    terms[0] = u;
    terms[1] = v;
    return;
  }
  const x = ((column[at.index] ?? 0) - middle.column) / middle.half;
  const y = ((row[at.index] ?? 0) - middle.row) / middle.half;
  const inward = u * x + v * y;
  terms[0] = u * x;
  terms[1] = u * y;
  terms[2] = u;
  terms[3] = v * x;
  terms[4] = v * y;
  terms[5] = v;
  terms[6] = -inward * x;
  terms[7] = -inward * y;
}

function correlationOf({ normal, right, count, squares, total }: Sums): number {
  const size = right.length;
  const [gain, offset] = [size - 2, size - 1];
  const [otherSquares, otherTotal] = [normal[gain * size + gain] ?? 0, normal[offset * size + gain] ?? 0];
  const product = right[gain] ?? 0;
  const both = product - (otherTotal * total) / count;
  const spread = (squares - total ** 2 / count) * (otherSquares - otherTotal ** 2 / count);
  return spread > 0 ? Math.max(-1, Math.min(1, both / Math.sqrt(spread))) : 0;
}
