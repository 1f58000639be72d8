import type { Interval } from "../../basis.ts";
import type { Vector } from "../../geometry/vector.ts";
import { placeAt } from "../curvature/course.ts";
import { type Alignment, alignFilms } from "./align-films.ts";
import type { Receptor } from "./camera.ts";
import type { CourseReading } from "./course-reading.ts";
import { curvatureInSpace } from "./curvature-in-space.ts";
import { drawnInterval, hullOf } from "./drawn-intervals.ts";
import { liesBeside } from "./lies-beside.ts";
import { type Paired, pairPoints } from "./pair-points.ts";
import { type AngleKnown, type LevelView, readyViews } from "./ready-views.ts";
import { receptorCautions } from "./receptor-check.ts";
import { liesOf, type Sides, sidesOf } from "./sides.ts";
import { type SolvedFilms, solveFilms } from "./solve-films.ts";
import type { TwoViewInput } from "./two-view-input.ts";
import type { TwoViewOutput } from "./two-view-output.ts";
import { withoutSignOfZero } from "./without-sign-of-zero.ts";

/** A film shift under which no side is told, in degrees. */
export const leastVerdictDeg = 10;
const usualSigmaMm = 0.05;

/** The values of the output that one kind of receptor gives. */
export interface ReceptorAnswer {
  readonly receptor: Receptor;
  readonly solved: SolvedFilms;
  readonly sides: Sides;
  readonly alignments: readonly Alignment[];
  readonly paired: Paired;
  readonly anglesDeg: readonly number[];
  readonly shiftDeg: number;
  readonly receptorCautions: readonly string[];
  readonly values: AnswerValues;
}

type AnswerValues = Pick<TwoViewOutput, "apparent" | "side" | "intervals" | "matched"> &
  Omit<Partial<TwoViewOutput>, "basis" | "cautions" | "notComputed">;

/** Everything that the films give for one kind of receptor. */
export function answerFor(
  input: TwoViewInput,
  level: readonly LevelView[],
  angles: readonly AngleKnown[],
  { receptor, sources }: { receptor: Receptor; sources: readonly string[] },
): ReceptorAnswer {
  const sigmaMm = input.sigmaMm ?? usualSigmaMm;
  const { films, alignments } = alignFilms(readyViews(input, level, angles, receptor), sigmaMm);
  const paired = pairPoints(films, sigmaMm);
  const solved = solveFilms(paired.films, input.sigmaMm);
  const anglesDeg = angles.map(({ angleDeg }) => angleDeg);
  const shiftDeg = Math.max(...anglesDeg) - Math.min(...anglesDeg);
  const sides = sidesOf(solved);
  const values = valuesOf(input, solved, { anglesDeg, sides, verdict: shiftDeg >= leastVerdictDeg, sources });
  return {
    ...{ receptor, solved, sides, alignments, paired, anglesDeg, shiftDeg },
    receptorCautions: receptorCautions(paired.films, input, solved.sigmaMm),
    values,
  };
}

interface Ways {
  readonly anglesDeg: readonly number[];
  readonly sides: Sides;
  readonly verdict: boolean;
  readonly sources: readonly string[];
}

function valuesOf(
  input: TwoViewInput,
  solved: SolvedFilms,
  { anglesDeg, sides, verdict, sources }: Ways,
): AnswerValues {
  const { reading, sigmaMm, places } = solved;
  const curvature = curvatureInSpace(solved, sources);
  const straightest = straightestOf(anglesDeg);
  const lies = liesValues(input, solved, verdict);
  const straight = reading.bends.length === 0;
  return {
    points: places.map(({ place }) => tripleOf(place)),
    sigma: places.map(({ spread }) => [sigmaMm * spread.x, sigmaMm * spread.y, sigmaMm * spread.z]),
    course: courseOf(solved),
    lengthMm: reading.measures.length,
    curvature,
    ...(straight
      ? {}
      : {
          plane: {
            angleToFilmDeg: reading.largest.planeDeg,
            outOfFilmDeg: withoutSignOfZero(reading.largest.outOfFilmDeg),
          },
        }),
    apparent: reading.largest.apparentDeg.map(withoutSignOfZero),
    hiddenDeg: hiddenOf(reading, straightest),
    side: verdict ? sides.side : "undetermined",
    bendSides: sides.each.map((side) => (verdict ? side : "undetermined")),
    ...lies.values,
    anglesDeg: anglesDeg.map(withoutSignOfZero),
    matched: solved.films.byIndex ? "byIndex" : "byLevel",
    intervals: {
      ...curvature.intervals,
      ...spaceIntervals(solved, straightest, straight),
      ...lies.intervals,
    },
  };
}

const tripleOf = ({ x, y, z }: Vector): [number, number, number] => [
  withoutSignOfZero(x),
  withoutSignOfZero(y),
  withoutSignOfZero(z),
];

/** 60 places at even steps along the fitted course. */
function courseOf({ course: { course, orifice, foramen } }: SolvedFilms): [number, number, number][] {
  return Array.from({ length: 60 }, (_, index) => {
    return tripleOf(placeAt(course, orifice + (index / 59) * (foramen - orifice)));
  });
}

/** The view nearest to straight on. */
const straightestOf = (anglesDeg: readonly number[]): number =>
  anglesDeg.reduce((best, angle, index) => (Math.abs(angle) < Math.abs(anglesDeg[best] ?? 0) ? index : best), 0);

const hiddenOf = ({ largest }: CourseReading, view: number): number =>
  withoutSignOfZero(largest.angleDeg - (largest.apparentDeg[view] ?? 0));

function spaceIntervals({ draws, reading }: SolvedFilms, view: number, straight: boolean): Record<string, Interval> {
  const interval = (of: (one: CourseReading) => number): Interval =>
    drawnInterval(
      draws.map((one) => ({ value: of(one.reading), counts: one.counts })),
      of(reading),
    );
  const hiddenDeg = interval((one) => hiddenOf(one, view));
  if (straight) return { hiddenDeg };
  return {
    hiddenDeg,
    angleToFilmDeg: interval(({ largest }) => largest.planeDeg),
    outOfFilmDeg: interval(({ largest }) => largest.outOfFilmDeg),
  };
}

function liesValues(input: TwoViewInput, solved: SolvedFilms, verdict: boolean) {
  const landmark = input.reference ?? commonLandmark(input);
  const found = landmark === undefined ? undefined : liesBeside(solved, landmark);
  if (found === undefined) return { values: {}, intervals: {} };
  const liesSide = verdict ? liesOf(found.interval) : ("undetermined" as const);
  return { values: { liesSide, liesBuccallyMm: found.buccalMm }, intervals: { liesBuccallyMm: found.interval } };
}

/** The first landmark of the first view that every view shows. */
export const commonLandmark = ({ views }: TwoViewInput): string | undefined =>
  Object.keys(views[0]?.landmarks ?? {}).find((name) => views.every(({ landmarks }) => name in landmarks));

/** The answers for both kinds of receptor as one: intervals hold both, a side stands where both agree. */
export function bothAnswers(one: AnswerValues, other: AnswerValues): AnswerValues {
  const names = new Set([...Object.keys(one.intervals), ...Object.keys(other.intervals)]);
  const intervals = Object.fromEntries(
    [...names].flatMap((name): [string, Interval][] => {
      const a = one.intervals[name] ?? other.intervals[name];
      const b = other.intervals[name] ?? a;
      return a === undefined || b === undefined ? [] : [[name, hullOf(a, b)]];
    }),
  );
  const curvature = one.curvature && {
    ...one.curvature,
    intervals: Object.fromEntries(
      Object.keys(one.curvature.intervals).flatMap((name) => (intervals[name] ? [[name, intervals[name]]] : [])),
    ),
  };
  const { liesSide } = one;
  return {
    ...one,
    ...(curvature === undefined ? {} : { curvature }),
    intervals,
    side: one.side === other.side ? one.side : "undetermined",
    bendSides: (one.bendSides ?? []).map((side, index) => (other.bendSides?.[index] === side ? side : "undetermined")),
    ...(liesSide === undefined ? {} : { liesSide: other.liesSide === liesSide ? liesSide : "undetermined" }),
  };
}
