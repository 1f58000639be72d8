import { distance } from "../../geometry/vector.ts";
import { type Mm, mm, rad } from "../../units.ts";
import { type Course, placeAt } from "./course.ts";
import { type BendMeasured, type PublishedMeasures, publishedMeasures } from "./published-measures.ts";
import type { BendShape } from "./shape-of.ts";

/** A course between its orifice and its foramen, as distances from where its parameters are counted. */
export interface CourseSpan {
  readonly course: Course;
  readonly bends: readonly BendShape[];
  readonly orifice: number;
  readonly foramen: number;
}

/** One bend with its place, its straight parts and the published measures of its part of the canal. */
export interface MeasuredBend extends BendMeasured {
  readonly from: Mm;
  readonly to: Mm;
  /** Positive to the right, in a plane; always positive in space. */
  readonly signedTurn: number;
  readonly towards: BendShape["towards"];
  readonly largestCurvature: number;
  readonly measures: PublishedMeasures;
}

/** What a course measures as a whole, and bend by bend. */
export interface CourseMeasures {
  readonly length: Mm;
  readonly chord: Mm;
  readonly totalTurn: number;
  readonly bends: readonly MeasuredBend[];
}

/**
 * What a fitted course measures between orifice and foramen.
 * Takes the course with its bends and the length of Weine's apical line; distances in the result start at the orifice.
 * A bend's part of the canal reaches from the end of the bend before it to the beginning of the bend after it.
 * @source plane geometry, docs/methods/curvature.md C6
 */
export function courseMeasures(span: CourseSpan, apicalLine: Mm): CourseMeasures {
  const { orifice, foramen } = span;
  const bends = span.bends.map((bend, index) => {
    const from = Math.min(Math.max(bend.from, orifice), foramen);
    const to = Math.max(Math.min(bend.to, foramen), from);
    const before = from - (span.bends[index - 1]?.to ?? orifice);
    const after = (span.bends[index + 1]?.from ?? foramen) - to;
    const signedTurn = bend.curvature * (to - from) * (1 - bend.rampShare);
    const measured: BendMeasured = {
      before: mm(Math.max(0, before)),
      length: mm(to - from),
      turn: rad(Math.abs(signedTurn)),
      rampShare: bend.rampShare,
      after: mm(Math.max(0, after)),
    };
    return {
      ...measured,
      from: mm(from - orifice),
      to: mm(to - orifice),
      signedTurn,
      towards: bend.towards,
      largestCurvature: Math.abs(bend.curvature),
      measures: publishedMeasures(measured, apicalLine),
    };
  });
  return {
    length: mm(foramen - orifice),
    chord: mm(distance(placeAt(span.course, orifice), placeAt(span.course, foramen))),
    totalTurn: bends.reduce((sum, bend) => sum + bend.turn, 0),
    bends,
  };
}

/** The bend of the largest angle, or undefined for a straight course. */
export const largestBend = (bends: readonly MeasuredBend[]): MeasuredBend | undefined =>
  bends.reduce<MeasuredBend | undefined>((best, bend) => (best && best.turn >= bend.turn ? best : bend), undefined);
