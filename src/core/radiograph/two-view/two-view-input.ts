import { z } from "zod";

const coordinate = z.number().min(-1000).max(1000);
const place = z.tuple([coordinate, coordinate]).describe("[u, v] in mm: across the film, along it.");
const tilt = (what: string) => z.number().min(-60).max(60).describe(`${what}, in degrees.`);

/** One film: how it was exposed, and the canal and landmarks on it. */
export const viewInput = z.strictObject({
  horizontalAngleDeg: tilt(
    "Horizontal tube angle: 0 straight on, above 0 with the tube moved to mesial; absent where unknown",
  ).optional(),
  verticalAngleDeg: tilt("Vertical tube angle: 0 square to the tooth, above 0 with the tube moved to the apex").default(
    0,
  ),
  uRunsTo: z.enum(["distal", "mesial"]).default("distal").describe("Where u grows to on this film."),
  tubeMovedTo: z
    .enum(["mesial", "distal"])
    .optional()
    .describe("Where the angle is unknown: to which side of the first view's the tube stood."),
  points: z.array(place).max(4000).describe("The canal on this film, orifice first, foramen last; at least 4."),
  landmarks: z.record(z.string().max(300), place).default({}).describe("Places seen on other films too, by name."),
});

/** What a course in space is computed from: the same canal on two or more films. */
export const twoViewInput = z.strictObject({
  views: z.array(viewInput).max(12).describe("Films of one tooth under different horizontal angles; at least 2."),
  levels: z
    .array(z.array(z.number().min(0).max(1000)).max(12))
    .max(18)
    .optional()
    .describe(
      "Places that a person says are one level: each row gives, for each view in order, the distance in mm along that view's trace from its first point. Rows grow on every view.",
    ),
  receptor: z
    .enum(["turnsWithBeam", "fixed", "unknown"])
    .default("turnsWithBeam")
    .describe(
      "Whether the receptor turns with the beam (a holder does this) or stays in place while the tube is shifted.",
    ),
  units: z
    .enum(["toothPlaneMm", "detectorMm"])
    .default("toothPlaneMm")
    .describe("Where the millimetres are counted: in the plane of the tooth, or on the detector."),
  geometry: z
    .strictObject({
      sourceToToothMm: z.number().min(50).max(5000),
      toothToDetectorMm: z.number().min(0).max(200).optional().describe("Needed for millimetres on the detector."),
      centralRayMm: coordinate.optional().describe("v of the central ray on the first view; estimated where absent."),
    })
    .optional()
    .describe("Where tube and detector stood; without it the rays are taken as parallel."),
  countedFrom: z
    .enum(["orifice", "input"])
    .default("orifice")
    .describe("The point that u and v are counted from: each film's first point, or one that the input counts from."),
  reference: z
    .string()
    .optional()
    .describe("The landmark against which the canal's side is told; the first common one where absent."),
  knownSeparation: z
    .strictObject({
      landmarks: z.tuple([z.string(), z.string()]),
      buccolingualMm: z.number().min(-30).max(30).describe("How far the second lies to buccal of the first."),
      sigmaMm: z.number().min(0).max(5).default(0.2),
    })
    .optional()
    .describe("Two landmarks whose buccolingual separation is known: fixes an unknown angle, and checks the receptor."),
  sigmaMm: z
    .number()
    .gt(0)
    .max(5)
    .optional()
    .describe("Standard deviation of a point in u and in v; estimated where absent."),
  scaleRelativeSigma: z
    .number()
    .min(0)
    .max(0.5)
    .default(0)
    .describe("Standard deviation of each film's calibration as a share of its scale: 0.02 is 2 %."),
  angleSigmaDeg: z.number().min(0).max(20).default(1).describe("Standard deviation of a horizontal angle."),
});
/** See {@link twoViewInput}. */
export type TwoViewInput = z.infer<typeof twoViewInput>;
/** One film of the input. */
export type ViewInput = TwoViewInput["views"][number];
