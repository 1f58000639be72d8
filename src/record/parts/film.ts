import { z } from "zod";
import { definePart } from "../part.ts";
import { between, day, line, otherPart } from "../values.ts";

const spacing = z
  .tuple([z.number().gt(0).max(5), z.number().gt(0).max(5)])
  .describe("[between rows, between columns] in mm.");
const box = z.strictObject({
  column: z.int().min(0),
  row: z.int().min(0),
  columns: z.int().min(1),
  rows: z.int().min(1),
});

/** What the file said about itself, less anything about a person. */
const technical = z.strictObject({
  sourceFormat: z.enum(["dicom", "png", "jpeg", "tiff", "bmp"]),
  sourceSha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .describe("Of the file as it was imported."),
  detectorSpacingMm: spacing.optional(),
  pixelSpacingMm: spacing.optional(),
  calibrationType: z.enum(["fiducial", "geometry"]).optional(),
  magnification: between(1, 3, "times").optional(),
  wasColour: z.boolean(),
  lossy: z.boolean(),
  crop: box.optional().describe("Which part of the imported picture this film is."),
  inverted: z.boolean().describe("Grey levels were turned at import."),
});

/** How a person last looked at the film; never burnt into its pixels. */
const view = z.strictObject({
  windowCentre: z.number(),
  windowWidth: z.number().gt(0),
  invert: z.boolean(),
  quarterTurns: z.int().min(0).max(3),
  mirrored: z.boolean(),
  gamma: between(0.25, 4, "1 where absent; above 1 brighter between black and white").optional(),
  localContrast: between(0, 1, "share of the contrast evened out region by region; 0 where absent").optional(),
  sharpening: z
    .strictObject({ amount: between(0, 4, "times"), radiusPx: between(0.5, 10, "pixels") })
    .optional()
    .describe("Unsharp mask; none where absent."),
});

/** One film: its pixels by content hash, its view of the tooth, and what is known about its scale. */
export const filmPart = definePart({
  kind: "film",
  version: 1,
  single: false,
  migrations: [],
  body: z.strictObject({
    hash: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .describe("SHA-256 of the kept film."),
    columns: z.int().min(1).max(20_000),
    rows: z.int().min(1).max(20_000),
    bitsStored: z.int().min(1).max(16),
    takenOn: day,
    purpose: z.enum(["diagnostic", "angled", "workingLength", "masterCone", "final", "recall", "other"]),
    visit: otherPart.optional(),
    horizontalAngleDeg: between(-60, 60, "degrees, 0 straight on, above 0 tube moved to mesial").optional(),
    verticalAngleDeg: between(-60, 60, "degrees").optional(),
    receptor: z.enum(["turnsWithBeam", "fixed", "unknown"]),
    uRunsTo: z.enum(["distal", "mesial", "unknown"]),
    technical,
    view: view.optional(),
    caption: line,
  }),
});
