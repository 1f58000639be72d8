import { defineTopic } from "../topic.ts";
import {
  clickShareBetween,
  courseLine,
  type PlaceOnCourse,
  placeAlong,
  placeOnCourse,
} from "./drawn-measures/course-line.ts";
import { errorAssumptions, lengthIntervals, oneProjection, planePlace } from "./drawn-measures/film-errors.ts";
import {
  type LevelOnCanalInput,
  type LevelOnCanalOutput,
  levelOnCanalInput,
  levelOnCanalOutput,
} from "./drawn-measures/level-on-canal-input.ts";

/**
 * How far a level lies from orifice and foramen along its canal on a film, with intervals.
 * @throws Refusal `trace.tooFewPoints` under 2 different places of the course.
 * @source plane geometry; docs/methods/level-on-canal.md
 */
export const levelOnCanalTopic = defineTopic({
  name: "levelOnCanal",
  version: 1,
  summary: "How far a level lies from orifice and foramen along its canal on a film, with intervals.",
  input: levelOnCanalInput,
  output: levelOnCanalOutput,
  sources: [],
  compute: levelOnCanal,
});

/** A place farther beside the course than this may belong to another canal, mm. */
const farAsideMm = 1;

function levelOnCanal(input: LevelOnCanalInput): LevelOnCanalOutput {
  const course = courseLine(input.course, "course");
  const level = placeOnCourse(course, planePlace(input.at));
  const [start, end] = [0, -1].map((index) => placeOnCourse(course, course.places.at(index) ?? planePlace(input.at)));
  const shareTo = (other: PlaceOnCourse | undefined): number => clickShareBetween(level, other ?? level);
  const toForamenMm = course.lengthMm - level.alongMm;
  return {
    fromStartMm: level.alongMm,
    startsAt: input.from,
    toForamenMm,
    asideMm: level.asideMm,
    onCourse: pairOf(placeAlong(course, level.alongMm)),
    direction: pairOf(level.direction),
    intervals: lengthIntervals(
      {
        fromStartMm: { mm: level.alongMm, clickShare: shareTo(start) },
        toForamenMm: { mm: toForamenMm, clickShare: shareTo(end) },
      },
      input,
    ),
    basis: {
      formula: "The nearest place of the course, and the way along the course to its two ends",
      assumptions: [
        "The course ends at the foramen; beyond its ends it goes on straight.",
        ...errorAssumptions(input),
        "The course as a whole may lie beside the canal by a click's error.",
      ],
      sources: [],
    },
    cautions: cautionsOf(level, course.lengthMm),
    notComputed: [],
  };
}

const pairOf = ({ x, y }: { readonly x: number; readonly y: number }): [number, number] => [x, y];

function cautionsOf({ alongMm, asideMm }: PlaceOnCourse, lengthMm: number): string[] {
  return [
    oneProjection,
    ...(asideMm > farAsideMm
      ? [`The place lies ${asideMm.toFixed(1)} mm beside the course: is it a level of this canal?`]
      : []),
    ...(alongMm < 0 || alongMm > lengthMm ? ["The place lies beyond the end of the course."] : []),
  ];
}
