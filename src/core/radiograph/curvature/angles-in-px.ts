import { deg } from "../../units.ts";
import { curvatureBasis } from "./curvature-basis.ts";
import { curvatureCautions } from "./curvature-cautions.ts";
import { type CurvatureInput, cleanPoints } from "./curvature-input.ts";
import { curvatureOf, type MeasuredCourse } from "./curvature-of.ts";
import type { CurvatureOutput } from "./curvature-output.ts";
import { needScale, pixelCourse } from "./in-pixels.ts";
import { constructionIn, fitsOf } from "./measures-in-mm.ts";
import { severityOf } from "./severity.ts";

/** No apical line of mm can be drawn without a scale. */
const noApicalLine = Number.POSITIVE_INFINITY;

/**
 * The angles of a course in px, on a film without a scale; lengths and radii are named as not computed.
 * @throws Refusal `trace.tooFewPoints`; `input.impossible` for points of space or values in mm.
 * @source docs/methods/curvature.md C20
 */
export function anglesInPx(input: CurvatureInput): CurvatureOutput {
  const { points, perPx, aspect } = pixelCourse(input);
  const clean = cleanPoints(points);
  const course = curvatureOf({
    clean,
    sigmaMm: input.sigmaPx === undefined ? undefined : input.sigmaPx * perPx,
    scaleSigma: 0,
    penalty: undefined,
    apicalLineMm: noApicalLine,
  });
  const { schneiderDeg = 0, pruettDeg = 0, accessAngleDeg = 0, totalTurnDeg = 0 } = course.headline;
  const intervals = Object.fromEntries(Object.entries(course.intervals).filter(([name]) => isTold(name)));
  const severity = severityOf({ value: deg(schneiderDeg), interval: intervals.schneiderDeg }, undefined).map((one) => ({
    ...one,
    within: [...one.within],
  }));
  return {
    ...{ schneiderDeg, pruettDeg, accessAngleDeg, totalTurnDeg },
    bends: bendsInPx(course),
    intervals,
    severity,
    ...constructionIn(course, {
      place: ({ x, y }) => [x / perPx, y / perPx / aspect],
      length: (length) => length / perPx,
    }),
    fit: course.family,
    fitQuality: fitsOf(course),
    basis: curvatureBasis(input),
    cautions: [
      ...(input.pixelAspect === undefined
        ? ["Pixels are taken as square: where the film's are not, every angle is off."]
        : []),
      ...curvatureCautions(course, clean.repeated, severity, (distance) => `${(distance / perPx).toFixed(1)} px`),
    ],
    notComputed: [...needScale, "profile", "smoothing", ...(course.construction ? [] : ["construction"])].map(
      (name) => ({
        name,
        why: name === "construction" ? "the course is straight" : "the film has no scale: angles alone can be told",
      }),
    ),
  };
}

const isTold = (name: string): boolean => name.endsWith("Deg") && name !== "weineDeg";

/** Each bend with its angles, and its place as a share of the course. */
function bendsInPx({ bends, measures }: MeasuredCourse): CurvatureOutput["bends"] {
  return bends.map(({ angleDeg, side, schneiderDeg, pruettDeg, accessAngleDeg, fromMm, toMm }) => ({
    ...{ angleDeg, side, schneiderDeg, pruettDeg, accessAngleDeg },
    fromShare: fromMm / measures.length,
    toShare: toMm / measures.length,
  }));
}
