import { z } from "zod";
import { intervalSchema, outputParts } from "../../basis.ts";
import { constructionSchema } from "./construction-output.ts";

const length = (text: string) => z.number().optional().describe(`${text}, in mm.`);
const angle = (text: string) => z.number().describe(`${text}, in degrees.`);

const published = {
  schneiderDeg: angle("Angle of Schneider: coronal axis against the line from departure to the bend's end"),
  weineDeg: z.number().optional().describe("Angle of Weine: coronal axis against the last length s, in degrees."),
  pruettDeg: angle("Angle of Pruett: between the tangents before and after the bend"),
  pruettRadiusMm: length("Radius of Pruett: of the circle that touches both tangents at the departures"),
  accessAngleDeg: angle("Canal access angle: coronal axis against the line from orifice to foramen"),
  heightMm: length("Curvature height from the point of departure: L1 sin a"),
  heightDistanceMm: length("Distance of its foot from the orifice: L1 cos a"),
  heightMaxMm: length("Largest distance between the canal and the line from orifice to foramen"),
} as const;

const bend = z.strictObject({
  angleDeg: angle("Angle between the tangents before and after the bend"),
  radiusMm: length("Radius of the circle that touches both tangents"),
  fromMm: length("Where it begins, along the canal from the orifice"),
  toMm: length("Where it ends"),
  fromShare: z.number().optional().describe("Without a scale: where it begins, as a share of the canal's length."),
  toShare: z.number().optional().describe("Without a scale: where it ends."),
  side: z
    .enum(["left", "right", "reference", "same", "opposite", "across"])
    .describe(
      "In a plane: right is towards +x for a canal along +y. In space: the first bend is the reference; a later one turns to the same side (within 45 degrees), the opposite one, or across.",
    ),
  planeFromFirstDeg: z.number().optional().describe("In space: angle between this bend's side and the first bend's."),
  ...published,
});

const severity = z.strictObject({
  source: z.string(),
  by: z.enum(["schneiderDeg", "pruettRadiusMm"]),
  value: z.number(),
  class: z.string().describe("The source's own word, or that the value lies between or above its classes."),
  within: z.array(z.string()).describe("Every class that the value's interval reaches."),
});

/** What the curvature of a course comes to: see docs/methods/curvature.md. */
export const curvatureOutput = z.strictObject({
  lengthMm: length("Length along the canal from orifice to foramen"),
  chordMm: length("Straight distance from orifice to foramen"),
  ...published,
  maxCurvaturePerMm: z.number().optional().describe("Largest curvature, in 1/mm."),
  minRadiusMm: length("Radius at the tightest place"),
  atMm: length("Distance of the tightest place from the orifice; of an arc, its middle"),
  totalTurnDeg: angle("All turning added up, whatever its side"),
  planarity: z
    .strictObject({
      planar: z.boolean(),
      rmsMm: z.number(),
      largestMm: z.number(),
      normal: z.tuple([z.number(), z.number(), z.number()]),
    })
    .optional()
    .describe("In space: how far the course leaves the plane that fits it best."),
  profile: z
    .array(z.strictObject({ sMm: z.number(), curvaturePerMm: z.number() }))
    .optional()
    .describe("Curvature along the canal by the smoothing spline; in a plane positive to the right."),
  smoothing: z
    .strictObject({ penalty: z.number(), chosenBy: z.enum(["stated noise", "estimated noise", "input"]) })
    .optional(),
  bends: z.array(bend).describe("Each bend by itself, from the orifice on, with the published measures of its part."),
  intervals: z.record(z.string(), intervalSchema).describe("An interval for each headline number."),
  severity: z.array(severity),
  construction: constructionSchema
    .optional()
    .describe("How the measures of the largest bend were built, in the input's axes and unit; absent without a bend."),
  fit: z.string().describe("The family of courses chosen, as straight-arc-straight."),
  fitQuality: z.strictObject({
    fits: z.boolean().describe("Whether the points lie about it as noise would."),
    rmsMm: length("Root mean square distance of the points from the course"),
    sigmaMm: length("Standard deviation of a point, stated or estimated"),
    weight: z.number().describe("Its weight among the families that the points allow."),
    others: z.array(z.strictObject({ family: z.string(), weight: z.number() })),
  }),
  ...outputParts,
});
/** See {@link curvatureOutput}. */
export type CurvatureOutput = z.infer<typeof curvatureOutput>;
