import type { Interval } from "../../basis.ts";
import type { Vector } from "../../geometry/vector.ts";
import { placeAt } from "../curvature/course.ts";
import { commonLandmark } from "./common-landmark.ts";
import type { CourseReading } from "./course-reading.ts";
import { curvatureInSpace } from "./curvature-in-space.ts";
import { drawnInterval, planeInterval } from "./drawn-intervals.ts";
import { levelsUsed } from "./levels-used.ts";
import { liesBeside } from "./lies-beside.ts";
import { liesOf, type Sides } from "./sides.ts";
import type { SolvedFilms } from "./solve-films.ts";
import { turnAlong } from "./turn-along.ts";
import type { TwoViewInput } from "./two-view-input.ts";
import type { TwoViewOutput } from "./two-view-output.ts";
import { withoutSignOfZero } from "./without-sign-of-zero.ts";

/** What one kind of receptor gives of the output. */
export type AnswerValues = Pick<TwoViewOutput, "apparent" | "side" | "intervals" | "matched"> &
  Omit<Partial<TwoViewOutput>, "basis" | "cautions" | "notComputed">;

interface Ways {
  readonly anglesDeg: readonly number[];
  readonly sides: Sides;
  readonly verdict: boolean;
  readonly sources: readonly string[];
}

/** What the solved films say, in the form of the output. */
export function answerValues(
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
    levels: levelsUsed(solved.films),
    ...turnAlong(solved),
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
    angleToFilmDeg: planeInterval(
      draws.map((one) => ({ value: one.reading.largest.towardsDeg, counts: one.counts })),
      reading.largest.towardsDeg,
    ),
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
