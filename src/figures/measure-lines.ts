import type { FilmMeasure, FilmPoint } from "./film-measure.ts";
import { pathThrough, type Spot } from "./svg-tree.ts";

/** The lines of a measure as path data: each kind differs in shape from the others, whatever its colour. */
export interface MeasureLines {
  /** What may be dashed. */
  readonly main: string;
  /** End markers and what is never dashed. */
  readonly ends: string;
  /** Lines of a construction, thinner than the rest. */
  readonly thin: string;
  /** The foramen: a full disc, so that the two ends of a course differ in shape. */
  readonly disc?: Spot;
}

const none: MeasureLines = { main: "", ends: "", thin: "" };

/**
 * The lines of a measure in the film's pixels.
 * Takes the measure and the film pixels that one unit of line width covers.
 */
export function measureLines(measure: FilmMeasure, unit: number): MeasureLines {
  switch (measure.kind) {
    case "trace":
      return traceLines(measure.points.map(spotOf), unit);
    case "outline":
      return { ...none, main: pathThrough(measure.points.map(spotOf), true) };
    case "spot":
      return { ...none, ends: spotLines(spotOf(measure.at), unit) };
    case "fragment":
      return fragmentLines(measure.points.map(spotOf), unit);
    case "gap":
      return gapLines(measure.points.map(spotOf), unit);
    case "level":
      return { ...none, ends: tickAcross(spotOf(measure.at), spotOf(measure.along), 9 * unit) };
    case "crownRoot":
      return axisLines(measure, unit);
    case "construction":
      return {
        ...none,
        thin: measure.lines.map((line) => pathThrough(line.map(spotOf))).join(""),
        ends: measure.read.map((line) => pathThrough(line.map(spotOf))).join(""),
      };
    default:
      return segmentLines(spotOf(measure.from), spotOf(measure.to), measure.kind === "wall" ? 8 * unit : 5 * unit);
  }
}

const spotOf = ([x, y]: FilmPoint): Spot => ({ x, y });

function traceLines(spots: readonly Spot[], unit: number): MeasureLines {
  const [first, last] = [spots[0], spots.at(-1)];
  if (first === undefined || last === undefined) return none;
  return { ...none, main: pathThrough(spots), ends: circlePath(first, 4 * unit), disc: last };
}

function spotLines({ x, y }: Spot, unit: number): string {
  const arm = 7 * unit;
  const across =
    pathThrough([
      { x: x - arm, y },
      { x: x + arm, y },
    ]) +
    pathThrough([
      { x, y: y - arm },
      { x, y: y + arm },
    ]);
  return across + circlePath({ x, y }, 4 * unit);
}

/** A fragment: two lines, one to each side of it, closed at its ends. */
function fragmentLines(spots: readonly Spot[], unit: number): MeasureLines {
  const half = 3.5 * unit;
  const sides = [half, -half].map((aside) =>
    spots.map((spot, index) => {
      const along = direction(spots[index - 1] ?? spot, spots[index + 1] ?? spot);
      return { x: spot.x - along.y * aside, y: spot.y + along.x * aside };
    }),
  );
  return { ...none, ends: pathThrough([...(sides[0] ?? []), ...(sides[1] ?? []).reverse()], true) };
}

/** The way from a filling's end to the apex: a tick across the end, a ring at the apex. */
function gapLines(spots: readonly Spot[], unit: number): MeasureLines {
  const [first, second, last] = [spots[0], spots[1], spots.at(-1)];
  if (first === undefined || second === undefined || last === undefined) return none;
  const ends = tickAcross(first, direction(first, second), 7 * unit) + circlePath(last, 4 * unit);
  return { ...none, main: pathThrough(spots), ends };
}

function axisLines(
  { crown, level, foot, apex }: Extract<FilmMeasure, { kind: "crownRoot" }>,
  unit: number,
): MeasureLines {
  const [from, to] = [spotOf(crown), spotOf(apex)];
  const along = direction(from, to);
  const ticks = [crown, foot, apex].map((place) => tickAcross(spotOf(place), along, 7 * unit)).join("");
  return { ...none, main: pathThrough([from, to]), ends: ticks, thin: pathThrough([spotOf(level), spotOf(foot)]) };
}

/** A line with a tick across each end. */
function segmentLines(from: Spot, to: Spot, half: number): MeasureLines {
  const along = direction(from, to);
  return { ...none, main: pathThrough([from, to]), ends: tickAcross(from, along, half) + tickAcross(to, along, half) };
}

/** The direction from one place to another, of length 1; two places in one have that of a line to the right turned down. */
function direction(from: Spot, to: Spot): Spot {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return length === 0 ? { x: 0, y: 1 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function tickAcross({ x, y }: Spot, along: Spot, half: number): string {
  const length = Math.hypot(along.x, along.y) || 1;
  const [across, down] = [(-along.y / length) * half, (along.x / length) * half];
  return pathThrough([
    { x: x - across, y: y - down },
    { x: x + across, y: y + down },
  ]);
}

const circlePath = ({ x, y }: Spot, radius: number): string =>
  `M${round(x - radius)} ${round(y)}a${round(radius)} ${round(radius)} 0 1 0 ${round(2 * radius)} 0a${round(radius)} ${round(radius)} 0 1 0 ${round(-2 * radius)} 0`;

const round = (value: number): number => Math.round(value * 100) / 100 || 0;
