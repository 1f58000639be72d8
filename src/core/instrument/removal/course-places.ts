import type { Vector } from "../../geometry/vector.ts";
import { vector } from "../../geometry/vector.ts";
import { placeAt } from "../../radiograph/curvature/course.ts";
import { cleanPoints } from "../../radiograph/curvature/curvature-input.ts";
import { fittedCourse } from "../../radiograph/curvature/fitted-course.ts";
import { onLine, traceOf } from "../../radiograph/curvature/trace.ts";
import { deg, radiansOf } from "../../units.ts";
import type { ArcCourse, CanalCourse, TracedCourse } from "../course-fields.ts";

/** Where a canal is at each distance from its orifice. */
export interface CoursePlaces {
  readonly lengthMm: number;
  /** Takes mm along the canal from the orifice. Gives the place in mm. */
  readonly placeAt: (fromOrificeMm: number) => Vector;
}

/**
 * Where a canal is, by the family of courses that fits its points, by the smoothing spline where none fits, or by its arc.
 * @throws Refusal `trace.tooFewPoints`, `input.impossible` as canal-bending.ts
 * @source docs/methods/curvature.md C3, C13
 */
export const coursePlaces = (course: CanalCourse): CoursePlaces =>
  "points" in course ? placesOfPoints(course) : { lengthMm: course.lengthMm, placeAt: (s) => placeOnArc(course, s) };

function placesOfPoints({ points, sigmaMm }: TracedCourse): CoursePlaces {
  const { agreement, fit, orifice, foramen, profile } = fittedCourse({
    ...{ clean: cleanPoints(points), sigmaMm, penalty: undefined },
  });
  if (agreement.fits) return { lengthMm: foramen - orifice, placeAt: (s) => placeAt(fit.course, orifice + s) };
  const line = traceOf(
    profile.samples.map(({ place }) => place),
    1,
  );
  return { lengthMm: profile.lengthMm, placeAt: (s) => onLine(line, Math.min(s, line.lengthMm)) };
}

/** The straight part runs down, the arc turns to the right. */
function placeOnArc({ radiusMm, turnDeg, startMm }: ArcCourse, s: number): Vector {
  if (s <= startMm) return vector(0, s);
  const whole = radiansOf(deg(turnDeg));
  const turned = Math.min((s - startMm) / radiusMm, whole);
  const beyond = Math.max(0, s - startMm - whole * radiusMm);
  return vector(
    radiusMm * (1 - Math.cos(turned)) + beyond * Math.sin(turned),
    startMm + radiusMm * Math.sin(turned) + beyond * Math.cos(turned),
  );
}
