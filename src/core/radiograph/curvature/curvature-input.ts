import { z } from "zod";
import { type Vector, vector } from "../../geometry/vector.ts";
import { type Fault, Refusal } from "../../refusal.ts";

const point = z.union([z.tuple([z.number(), z.number()]), z.tuple([z.number(), z.number(), z.number()])]);

/** What the curvature of a course is computed from. */
export const curvatureInput = z.strictObject({
  points: z
    .array(point)
    .max(20_000)
    .describe("Places along the canal in mm, orifice first, foramen last; all [x,y] or all [x,y,z]; at least 4."),
  unit: z
    .enum(["mm", "px"])
    .optional()
    .describe("Of the points; mm where absent. In px, on a film without a scale, angles alone are given."),
  pixelAspect: z
    .number()
    .min(0.2)
    .max(5)
    .optional()
    .describe("How high a pixel is, in its widths, where the points are in px; taken as square where absent."),
  sigmaPx: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .describe("Standard deviation of a point in each direction, in widths of a pixel, where the points are in px."),
  sigmaMm: z
    .number()
    .min(0)
    .max(5)
    .optional()
    .describe("Standard deviation of a point in each direction, in mm; estimated from the points where absent."),
  scaleRelativeSigma: z
    .number()
    .min(0)
    .max(0.5)
    .optional()
    .describe("Standard deviation of the calibration as a share of the scale: 0.02 is 2 %. It widens lengths only."),
  smoothing: z
    .union([z.literal("auto"), z.number().min(0)])
    .optional()
    .describe("Penalty of the profile's spline; auto (the default) takes it from the stated or estimated noise."),
  weineLengthMm: z
    .number()
    .gt(0)
    .max(20)
    .optional()
    .describe("Length of canal over which Weine's apical line is drawn (s), in mm; 2 where absent."),
});
/** See {@link curvatureInput}. */
export type CurvatureInput = z.infer<typeof curvatureInput>;

/** Points that can be measured: no two neighbours in one place, all in the plane or all in space. */
export interface CleanPoints {
  readonly points: readonly Vector[];
  /** Directions across the course: 1 in a plane, 2 in space. */
  readonly across: 1 | 2;
  /** Points that stood in the place of their neighbour and were left out. */
  readonly repeated: number;
}

/**
 * The points of an input, without the ones that repeat their neighbour.
 * @throws Refusal `input.impossible` for each point with another number of coordinates than the first, and
 * `trace.tooFewPoints` where fewer than 4 different ones are left.
 */
export function cleanPoints(points: CurvatureInput["points"]): CleanPoints {
  const size = points[0]?.length ?? 2;
  const odd = points.flatMap((one, index): Fault[] =>
    one.length === size
      ? []
      : [{ path: `points[${index}]`, says: `has ${one.length} numbers where the first point has ${size}` }],
  );
  if (odd.length > 0)
    throw new Refusal("input.impossible", "Cannot measure the course: its points mix plane and space", {}, odd);
  const places = points.map(([x, y, z]) => vector(x, y, z));
  const kept = places.filter((place, index) => !samePlace(place, places[index - 1]));
  if (kept.length < 4) throw tooFew(points.length, kept.length);
  return { points: kept, across: size === 3 ? 2 : 1, repeated: places.length - kept.length };
}

const samePlace = (a: Vector, b: Vector | undefined): boolean =>
  b !== undefined && a.x === b.x && a.y === b.y && a.z === b.z;

function tooFew(given: number, different: number): Refusal {
  const says = `holds ${given} points, ${different} of them apart from their neighbour; at least 4 are needed`;
  const message = "Cannot measure the course: it has fewer than 4 points; mark more between orifice and foramen";
  return new Refusal("trace.tooFewPoints", message, { given, different }, [{ path: "points", says }]);
}
