import { distance, dot, minus, plus, unit, type Vector } from "../../geometry/vector.ts";
import type { Mm } from "../../units.ts";
import { type Course, placeAt, stateAt } from "./course.ts";
import { type CourseMeasures, largestBend, type MeasuredBend } from "./course-measures.ts";

/** A straight line from one place to another. */
type Line = readonly [Vector, Vector];

/** Places and lines by which the published measures of the largest bend are built. */
export interface Construction {
  /** The ends of the bend's part of the canal, and where it leaves its two tangents. */
  readonly orifice: Vector;
  readonly departure: Vector;
  readonly bendEnd: Vector;
  readonly foramen: Vector;
  /** The angle at the departure. */
  readonly schneider: { readonly axis: Line; readonly line: Line };
  /** The angle where the two lines cross. */
  readonly weine?: { readonly axis: Line; readonly apical: Line; readonly chord: Line };
  /** The circle that touches both tangents at the departures; absent for a bend of half a turn and more. */
  readonly pruett?: {
    readonly tangents: readonly [Line, Line];
    readonly crossing: Vector;
    readonly centre: Vector;
    readonly radius: number;
  };
  /** The angle at the orifice. */
  readonly access: { readonly axis: Line; readonly line: Line };
  /** Two heights over the line from orifice to foramen: from the departure, and the largest. */
  readonly height: { readonly line: Line; readonly fromDeparture: Line; readonly largest: Line };
}

/** What a construction is made of: a course, where its orifice lies on it, and what it measures. */
export interface ConstructedCourse {
  readonly course: Course;
  readonly orifice: number;
  readonly measures: CourseMeasures;
}

/**
 * How the published measures of the largest bend are built: their lines, the crossing of the tangents, the circle.
 * Takes the course with its measures and the length s of Weine's apical line, in one unit. Gives places in that unit, or
 * undefined for a straight course.
 * @source constructions of Schneider 1971, Weine 1982, Pruett 1997 and Gunday 2005 (memory); docs/methods/curvature C19
 */
export function constructionOf(made: ConstructedCourse, apicalLine: Mm | undefined): Construction | undefined {
  const bend = largestBend(made.measures.bends);
  if (bend === undefined || bend.turn === 0) return undefined;
  const at = (s: number): Vector => placeAt(made.course, made.orifice + s);
  const [orifice, departure] = [at(bend.from - bend.before), at(bend.from)];
  const [bendEnd, foramen] = [at(bend.to), at(bend.to + bend.after)];
  const [coronal, apical] = [bend.from, bend.to].map((s) => stateAt(made.course, made.orifice + s).tangent);
  if (coronal === undefined || apical === undefined) return undefined;
  const places = { orifice, departure, bendEnd, foramen };
  const reach = distance(departure, foramen);
  const whole: Line = [orifice, foramen];
  const weine = apicalLine === undefined ? undefined : weineLines({ ...places, coronal, bend, at }, apicalLine);
  const pruett = pruettCircle({ ...places, coronal, apical, bend });
  return {
    ...places,
    schneider: { axis: [orifice, plus(departure, coronal, reach)], line: [departure, foramen] },
    ...(weine === undefined ? {} : { weine }),
    ...(pruett === undefined ? {} : { pruett }),
    access: { axis: [orifice, plus(orifice, coronal, distance(orifice, foramen))], line: whole },
    height: {
      line: whole,
      fromDeparture: [departure, footOn(whole, departure)],
      largest: largestHeight(whole, bend, at),
    },
  };
}

interface BendInPlace {
  readonly orifice: Vector;
  readonly departure: Vector;
  readonly bendEnd: Vector;
  readonly foramen: Vector;
  /** Direction of the canal before the bend. */
  readonly coronal: Vector;
  readonly bend: MeasuredBend;
}

/** C8: the chord of the last length s, drawn back to where it crosses the axis (in space: comes nearest to it). */
function weineLines(
  { orifice, departure, foramen, coronal, bend, at }: BendInPlace & { at: (s: number) => Vector },
  apicalLine: Mm,
): Construction["weine"] | undefined {
  if (apicalLine > bend.before + bend.length + bend.after) return undefined;
  const from = at(bend.to + bend.after - apicalLine);
  const back = unit(minus(foramen, from));
  const between = minus(departure, from);
  const cosine = dot(coronal, back);
  const across = 1 - cosine * cosine;
  if (across < 1e-9) return undefined;
  const along = (cosine * dot(between, back) - dot(between, coronal)) / across;
  const crossing = plus(departure, coronal, along);
  return { axis: [orifice, crossing], apical: [crossing, foramen], chord: [from, foramen] };
}

/** C9: both tangents are as long from their crossing; the circle touches them where the canal leaves them. */
function pruettCircle({
  orifice,
  departure,
  bendEnd,
  foramen,
  coronal,
  apical,
  bend,
}: BendInPlace & { readonly apical: Vector }): Construction["pruett"] | undefined {
  const radius = bend.measures.pruettRadius;
  if (radius === undefined || bend.turn > largestTurn) return undefined;
  const crossing = plus(departure, coronal, radius * Math.tan(bend.turn / 2));
  const towards = minus(bendEnd, departure);
  const inward = unit(plus(towards, coronal, -dot(towards, coronal)));
  return {
    tangents: [
      [orifice, crossing],
      [crossing, bend.after > 0 ? foramen : plus(bendEnd, apical, radius * Math.tan(bend.turn / 2))],
    ],
    crossing,
    centre: plus(departure, inward, radius),
    radius,
  };
}

/** Tangents of a larger turn hardly cross, rad. */
const largestTurn = 2.8;

/** The foot of a place on a line. */
function footOn([from, to]: Line, place: Vector): Vector {
  const along = unit(minus(to, from));
  return plus(from, along, dot(minus(place, from), along));
}

/** C11: the place of the bend farthest from the line, by halving thirds: that distance has one top. */
function largestHeight(line: Line, { from, to }: MeasuredBend, at: (s: number) => Vector): Line {
  const height = (s: number): number => distance(at(s), footOn(line, at(s)));
  let [low, high]: [number, number] = [from, to];
  for (let round = 0; round < 60; round++) {
    const third = (high - low) / 3;
    if (height(low + third) < height(high - third)) low += third;
    else high -= third;
  }
  const top = at(low);
  return [top, footOn(line, top)];
}
