import { z } from "zod";
import { intervalSchema, outputParts } from "../basis.ts";

/** Far wider than any film, so that only a slip falls outside. */
const coordinate = z.number().min(-100_000).max(100_000);
const place = z.tuple([coordinate, coordinate]).describe("[u, v] in px: to the right, down.");
const step = z.number().min(0.0001).max(5);
const spacing = z.tuple([step, step]);

const knownSchema = z.strictObject({
  kind: z
    .enum(["length", "sphere"])
    .default("length")
    .describe("What was marked: a length, or a sphere across its shadow."),
  lengthMm: z.number().min(0.01).max(500).describe("The true length; of a sphere its diameter."),
  from: place,
  to: place,
  sigmaPx: z.number().min(0.001).max(100).default(1).describe("Standard deviation of a click, px per axis."),
});
/** One object of known size, marked on the film. */
export type Known = z.infer<typeof knownSchema>;

/** What may be known about a film's scale; every field may be absent, but not all. */
export const calibrateInput = z
  .strictObject({
    known: z.array(knownSchema).default([]).describe("Objects of known size on this film."),
    detectorSpacingMm: spacing.optional().describe("[between rows, between columns] at the detector."),
    magnification: z.number().min(1).max(3).optional().describe("Length at the detector over length in the tooth."),
    pixelSpacingMm: spacing.optional().describe("[between rows, between columns] as the file states it."),
    calibrationType: z
      .enum(["fiducial", "geometry"])
      .optional()
      .describe("How the file says pixelSpacingMm came about: from an object on the film, or by its magnification."),
    geometry: z
      .strictObject({ sourceToToothMm: z.number().min(1).max(5_000), toothToDetectorMm: z.number().min(0).max(1_000) })
      .optional()
      .describe("Where source and detector stood: gives the magnification, and the shadow of a sphere."),
  })
  .describe("What is known about a film's scale: known lengths marked on it, the file's spacing, or both.");
/** See {@link calibrateInput}. */
export type CalibrateInput = z.infer<typeof calibrateInput>;

/** Where a scale came from, best first. */
const scaleOrigins = [
  "knownLength",
  "pixelSpacingFiducial",
  "pixelSpacingGeometry",
  "detectorSpacingOverMagnification",
  "detectorSpacing",
  "pixelSpacingOfUnknownOrigin",
] as const;
/** Where a scale came from. */
export type ScaleOrigin = (typeof scaleOrigins)[number];

const disagreementSchema = z.strictObject({
  chiSquare: z.number().min(0),
  degreesOfFreedom: z.int().min(1),
  p: z.number().min(0).max(1).describe("The chance of at least this much disagreement from the clicks alone."),
});

const foreshorteningSchema = z.strictObject({
  ratio: z.number().min(1).describe("The largest over the smallest mm per px that single known lengths give."),
  between: z.tuple([z.int(), z.int()]).describe("Which two entries of known: the largest scale, the smallest."),
  explanations: z.array(z.string()).describe("What it can mean; the film alone does not say which."),
  tiltDeg: z.number().describe("If tilt alone were the cause: how far one object leans out of the other's plane."),
  depthShare: z
    .number()
    .describe("If depth alone were the cause: how far apart in depth, as a share of the source's distance."),
});

/** A film's scale with its error, where it came from, and what speaks against it. */
export const calibrateOutput = z.strictObject({
  mmPerPx: z.strictObject({ column: z.number().positive(), row: z.number().positive() }),
  sigmaMmPerPx: z.number().optional().describe("Standard deviation of the scale (of the mean of column and row)."),
  relativeSigma: z.number().optional().describe("The same as a share; it is common to every length on this film."),
  interval: intervalSchema.optional().describe("Of mmPerPx, the geometric mean of column and row."),
  used: z.enum(scaleOrigins).describe("Which of the scales on offer was used."),
  impliedMagnification: z
    .number()
    .optional()
    .describe("Detector spacing over the scale of the known length: how large the object was thrown."),
  disagreement: disagreementSchema.optional(),
  foreshortening: foreshorteningSchema.optional().describe("Present where known lengths disagree beyond the clicks."),
  ...outputParts,
});
/** See {@link calibrateOutput}. */
export type CalibrateOutput = z.infer<typeof calibrateOutput>;
