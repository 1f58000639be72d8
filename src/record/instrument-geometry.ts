import { z } from "zod";
import { between, line, mmBetween } from "./values.ts";

const station = z.strictObject({ atMm: mmBetween(0, 40), diameterMm: mmBetween(0.01, 2) });

/** Turning to and fro, as the motor is set. */
export const reciprocation = z.strictObject({
  forwardDeg: between(1, 3_600, "degrees of one stroke forward"),
  backDeg: between(1, 3_600, "degrees of one stroke back"),
  frequencyHz: between(0.1, 100, "pairs of strokes a second"),
});

/** An instrument by geometry and alloy, as every part that names one holds it; never by who made it. */
export const instrumentGeometry = {
  size: z
    .int()
    .min(6)
    .max(160)
    .describe("Hundredths of a mm at the tip, ISO 3630-1; one outside of the series is custom."),
  taper: between(0, 0.2, "mm per mm; of a variable taper the one at the tip"),
  profile: z.array(station).min(2).max(20).optional().describe("Diameters from the tip on; they rule over the taper."),
  workingMm: mmBetween(1, 40).optional().describe("Working part; 16 where absent."),
  lengthMm: mmBetween(5, 60).optional().describe("From tip to handle."),
  maxDiameterMm: mmBetween(0.1, 2).optional().describe("Where it stops widening."),
  section: z.enum(["circle", "triangle", "convexTriangle", "square", "s", "slenderRectangle"]).optional(),
  alloy: z.enum(["stainlessSteel", "nickelTitanium", "heatTreatedNickelTitanium", "other"]),
  movement: z.enum(["hand", "continuous", "reciprocating", "ultrasonic"]),
} as const;

/** The same of an instrument that is told afterwards, when its size, taper, alloy or movement may not be known. */
export const instrumentAsTold = {
  ...instrumentGeometry,
  size: instrumentGeometry.size.optional(),
  taper: instrumentGeometry.taper.optional(),
  alloy: instrumentGeometry.alloy.optional(),
  movement: instrumentGeometry.movement.optional(),
} as const;

/** The counted file that was used, and what stood against it in the cabinet before. */
export const countedFile = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z0-9-]{3,64}$/, "is not the id of a file")
    .describe("Of the cabinet."),
  label: line.describe("As the clinic marks it."),
  usesBefore: z.int().min(0).max(1_000).optional(),
  turnsBefore: between(0, 1e7, "turns that are left of both directions").optional(),
  sterilisationsBefore: z.int().min(0).max(1_000).optional(),
});
