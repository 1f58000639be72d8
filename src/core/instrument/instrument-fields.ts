import { z } from "zod";

const station = z.strictObject({
  atMm: z.number().min(0).max(40).describe("Distance from the tip, in mm."),
  diameterMm: z.number().describe("Diameter there, in mm."),
});

/** How an instrument is described: by geometry and alloy, never by who made it. Spread it where an input is an instrument. */
export const instrumentFields = {
  size: z
    .number()
    .gt(0)
    .max(200)
    .optional()
    .describe("Size by ISO 3630-1: hundredths of a mm at the tip. One outside of the series is custom. Or tipMm."),
  tipMm: z.number().gt(0).max(2).optional().describe("Diameter that the taper has at the very tip, in mm. Or size."),
  taper: z.number().min(-1).max(1).optional().describe("Growth of the diameter, in mm per mm: 0.06. Or profile."),
  profile: z
    .array(station)
    .min(1)
    .max(60)
    .optional()
    .describe("Diameters at several distances from the tip, in their order; straight lines between them. Or taper."),
  workingMm: z
    .number()
    .gt(0)
    .max(40)
    .optional()
    .describe("Length of the working part; 16 where absent, or to the last station of the profile."),
  lengthMm: z.number().gt(0).max(60).optional().describe("From tip to handle: 21, 25, 28, 31 or another, in mm."),
  maxDiameterMm: z
    .number()
    .gt(0)
    .max(2)
    .optional()
    .describe("Where the instrument stops widening, in mm; many tapered ones do."),
  section: z
    .enum(["circle", "triangle", "convexTriangle", "square", "s", "slenderRectangle"])
    .optional()
    .describe("Shape of the cross-section."),
  alloy: z.enum(["stainlessSteel", "nickelTitanium", "heatTreatedNickelTitanium", "other"]).optional(),
  movement: z.enum(["hand", "continuous", "reciprocating", "ultrasonic"]).optional(),
  rpm: z.number().min(0).max(20_000).optional().describe("Turns a minute that it is meant for."),
  torqueLimitNmm: z.number().gt(0).max(200).optional().describe("Limit set at the motor, in N mm (1 N cm is 10 N mm)."),
} as const;

/** An instrument as an input of topics: see {@link instrumentFields}. */
export const instrumentSchema = z
  .strictObject(instrumentFields)
  .describe("An instrument by geometry and alloy: size or tipMm, taper or profile.");
/** See {@link instrumentSchema}. */
export type Instrument = z.infer<typeof instrumentSchema>;

/** A diameter at a distance from the tip. */
export type Station = z.infer<typeof station>;
