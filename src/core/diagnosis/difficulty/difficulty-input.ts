import { z } from "zod";
import { intervalSchema } from "../../basis.ts";

const canalName = z
  .string()
  .regex(/^[A-Z][A-Za-z0-9]{0,7}$/, "is not a name of a canal: a capital and up to seven letters or digits, as MB2");
const third = z.enum(["coronal", "middle", "apical"]);
const text = z.string().trim().min(1).max(60);

const canal = z.strictObject({
  name: canalName,
  deflectionDeg: z
    .number()
    .min(0)
    .max(180)
    .optional()
    .describe("Angle between the tangents before and after the largest bend."),
  deflectionInterval: intervalSchema.optional(),
  radiusMm: z
    .number()
    .gt(0)
    .max(1_000)
    .optional()
    .describe("Radius of the circle that touches both tangents of the largest bend."),
  radiusInterval: intervalSchema.optional(),
  lengthMm: z.number().gt(0).max(60).optional().describe("From the reference point to the apex."),
  lengthInterval: intervalSchema.optional(),
  sCurve: z.boolean().optional().describe("It bends to two sides."),
  fromOneFilm: z.boolean().optional().describe("Bend and radius were seen on one film alone."),
  narrowed: z.boolean().optional().describe("Narrowed or not to be seen on the film."),
});
/** One canal as far as it is known. */
export type DifficultyCanal = z.infer<typeof canal>;

/** What is known of a tooth before it is treated; whatever is left out was not recorded, and counts neither way. */
export const difficultyInput = z.strictObject({
  tooth: z.string().optional().describe("Two-digit number of ISO 3950, as 46."),
  canals: z.array(canal).max(10).optional(),
  extraRoot: text.optional().describe("What it is, as radix entomolaris; none where there is no extra root."),
  extraCanal: text.optional().describe("What it is, as 4 canals, 3 are usual; none where there is no extra canal."),
  calcified: z.boolean().optional().describe("Chamber or canals calcified on the film."),
  earlierFilling: z
    .strictObject({
      present: z.boolean(),
      endMm: z.number().min(-20).max(30).optional().describe("mm short of the apex, below 0 beyond it."),
      density: z.enum(["dense", "voids"]).optional(),
      beyond: z.boolean().optional().describe("It reaches beyond the apex, where no distance is known."),
    })
    .optional(),
  post: z.boolean().optional(),
  fragments: z
    .array(
      z.strictObject({
        canal: canalName.optional(),
        third: third.optional(),
        beyondBend: z.boolean().optional().describe("It lies beyond a bend, or in it."),
      }),
    )
    .max(10)
    .optional()
    .describe("Pieces of instruments that lie in canals; an empty list where none does."),
  alteredCourses: z
    .array(z.strictObject({ is: z.enum(["ledge", "block", "transportation"]), canal: canalName.optional() }))
    .max(10)
    .optional()
    .describe("An empty list where none is seen."),
  perforation: z.boolean().optional(),
  openApex: z.boolean().optional(),
  resorption: z.enum(["none", "internal", "external", "both"]).optional(),
  rotationDeg: z.number().min(0).max(180).optional(),
  tiltDeg: z.number().min(0).max(90).optional(),
  mouthOpeningMm: z.number().min(0).max(80).optional().describe("Between the front teeth."),
  gag: z.boolean().optional(),
  physicalStatusClass: z.int().min(1).max(5).optional().describe("ASA class."),
});
/** See {@link difficultyInput}. */
export type DifficultyInput = z.infer<typeof difficultyInput>;
