import { type Vector, vector } from "../../geometry/vector.ts";
import { deg, degreesOf, mm, radiansOf } from "../../units.ts";
import { chooseFamily } from "../curvature/choose-family.ts";
import { courseMeasures, largestBend } from "../curvature/course-measures.ts";
import { bendsOf } from "../curvature/shape-of.ts";
import { traceOf } from "../curvature/trace.ts";
import type { FilmPlace, Receptor } from "../two-view/camera.ts";
import { apicalLine } from "../two-view/solve-films.ts";

/** A film that shows less of a bend than this shows no place for it. */
const leastBendDeg = 5;
/** Where a bend is supposed that the film does not show at all: shares of the course. */
const unseen = { from: 0.5, to: 0.8 };

/** What is supposed of a canal's depth, and how the film that shows it was exposed. */
export interface Supposed {
  /** How far it turns out of the film's plane, above 0 to buccal. */
  readonly outOfFilmDeg: number;
  readonly angleDeg: number;
  readonly receptor: Receptor;
  /** From where to where it turns, in mm along the film from the orifice. */
  readonly bend: readonly [number, number];
}

/**
 * A canal in space that looks on one film as the traced one does and turns out of the film's plane by a supposed angle: where
 * the film shows its largest bend, or in its second half where the film shows none.
 * @source plane geometry, docs/methods/tube-shift.md C2
 */
export function supposedCanal(course: readonly FilmPlace[], supposed: Supposed): Vector[] {
  const { outOfFilmDeg, angleDeg, receptor, bend } = supposed;
  const along = distancesOf(course);
  const [from, to] = bend;
  const angle = radiansOf(deg(angleDeg));
  let y = 0;
  return course.map(({ u, v }, index) => {
    const before = course[index - 1] ?? { u, v };
    const middle = ((along[index] ?? 0) + (along[index - 1] ?? 0)) / 2;
    const share = Math.min(1, Math.max(0, (middle - from) / (to - from)));
    // C2: dy/dz is the tangent of the turning so far.
    y += (v - before.v) * Math.tan(radiansOf(deg(outOfFilmDeg * share)));
    const x = receptor === "fixed" ? u - y * Math.tan(angle) : (u - y * Math.sin(angle)) / Math.cos(angle);
    return vector(mm(x), mm(y), mm(v));
  });
}

function distancesOf(course: readonly FilmPlace[]): number[] {
  let reached = 0;
  return course.map(({ u, v }, index) => {
    const before = course[index - 1] ?? { u, v };
    reached += Math.hypot(u - before.u, v - before.v);
    return reached;
  });
}

/**
 * From where to where a bend is supposed, in mm along the film from the orifice: where the film shows its largest one, or in
 * the second half of the canal where it shows none.
 * @source own rule, docs/methods/tube-shift.md C2
 */
export function supposedBend(course: readonly FilmPlace[], sigmaMm: number): readonly [number, number] {
  const trace = traceOf(
    course.map(({ u, v }) => vector(u, v)),
    1,
  );
  const fit = chooseFamily(trace, sigmaMm).fits[0]?.fit;
  if (fit === undefined) throw new RangeError("some family always fits");
  const places = fit.projection.places;
  const span = { orifice: places[0] ?? 0, foramen: places.at(-1) ?? trace.lengthMm };
  const bends = bendsOf(fit.family, 1, fit.parameters);
  const largest = largestBend(courseMeasures({ course: fit.course, bends, ...span }, apicalLine).bends);
  if (largest !== undefined && degreesOf(largest.turn) >= leastBendDeg) return [largest.from, largest.to];
  return [unseen.from * trace.lengthMm, unseen.to * trace.lengthMm];
}
